/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.ferrule.io.json.JsonNode.ArrayNode;
import org.ferrule.io.json.JsonNode.Member;
import org.ferrule.io.json.JsonNode.NumberNode;
import org.ferrule.io.json.JsonNode.ObjectNode;
import org.ferrule.io.json.JsonNode.StringNode;
import org.ferrule.io.json.JsonNode.WordNode;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;

/** Reads strict JSON (RFC 8259) into a tree that knows the place of everything and the spelling of numbers. */
final class TreeReader {

    /** No document needs more, and a deeper one would exhaust the stack. */
    private static final int DEEPEST = 100;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
            .build();

    private final String text;
    private final JsonParser parser;

    private TreeReader(String text, JsonParser parser) {
        this.text = text;
        this.parser = parser;
    }

    /**
     * Reads the one value that the text consists of.
     *
     * @throws JsonProcessingException with its place if the text is not JSON, or if something follows the value
     */
    static JsonNode read(String text) throws JsonProcessingException {
        try (JsonParser parser = FACTORY.createParser(text)) {
            return new TreeReader(text, parser).document();
        } catch (JsonProcessingException e) {
            throw e;
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail to be read", e);
        }
    }

    private JsonNode document() throws IOException {
        if (parser.nextToken() == null) {
            throw new JsonParseException(parser, "The document is empty");
        }
        JsonNode node = value();
        if (parser.nextToken() != null) {
            throw new JsonParseException(parser, "Something follows the end of the document",
                    parser.currentTokenLocation());
        }
        return node;
    }

    private JsonNode value() throws IOException {
        int start = offset();
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(start);
            case START_ARRAY -> array(start);
            case VALUE_STRING -> string(start, parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(start, parser.getText());
            default -> new WordNode(start, start + parser.getText().length(), parser.getText());
        };
    }

    private ObjectNode object(int start) throws IOException {
        List<Member> members = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            int keyStart = offset();
            String key = parser.currentName();
            parser.nextToken();
            members.add(new Member(keyStart, endOfString(keyStart), key, value()));
        }
        return new ObjectNode(start, offset() + 1, List.copyOf(members));
    }

    private ArrayNode array(int start) throws IOException {
        List<JsonNode> values = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            values.add(value());
        }
        return new ArrayNode(start, offset() + 1, List.copyOf(values));
    }

    /** Taking the value has made the parser read the string to its end, so that there is one. */
    private StringNode string(int start, String value) {
        return new StringNode(start, endOfString(start), value);
    }

    private static NumberNode number(int start, String spelling) {
        return new NumberNode(start, start + spelling.length(), spelling);
    }

    private int offset() {
        return (int) parser.currentTokenLocation().getCharOffset();
    }

    /** The parser reads on lazily, so the end of a string is looked up. */
    private int endOfString(int start) {
        return SourceText.endOfString(text, start);
    }
}
