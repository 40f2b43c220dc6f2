/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.io.IOException;
import java.util.List;

import org.ferrule.io.json.JsonNode.ArrayNode;
import org.ferrule.io.json.JsonNode.Member;
import org.ferrule.io.json.JsonNode.ObjectNode;

import com.fasterxml.jackson.core.io.JsonStringEncoder;

/**
 * Writes the canonical layout, piece after piece: two spaces, LF, an object one key per line, an array of scalars on one
 * line. Whoever writes answers for the order: a key, then one value; brackets in pairs.
 */
final class Layout {

    private static final JsonStringEncoder ENCODER = JsonStringEncoder.getInstance();
    private static final String INDENT = "  ";

    private final Appendable target;
    private int depth;
    private boolean empty = true;

    /** Creates a layout that writes to a target a value that stands alone. */
    Layout(Appendable target) {
        this(target, 0);
    }

    /** Creates a layout that writes to a target a value that stands inside of so many brackets. */
    Layout(Appendable target, int depth) {
        this.target = target;
        this.depth = depth;
    }

    /** Begins an object, or an array whose values stand on lines of their own. */
    void open(char bracket) throws IOException {
        target.append(bracket);
        depth++;
        empty = true;
    }

    /** Ends what was begun last. */
    void close(char bracket) throws IOException {
        depth--;
        if (!empty) {
            newLine();
        }
        target.append(bracket);
        empty = false;
    }

    /** Begins the next value of an array whose values stand on lines of their own. */
    void next() throws IOException {
        if (!empty) {
            target.append(',');
        }
        empty = false;
        newLine();
    }

    /** Begins the next entry of an object. */
    void key(String key) throws IOException {
        spelledKey(string(key));
    }

    /** Tells inside of how many brackets the next value stands. */
    int depth() {
        return depth;
    }

    /** Writes a value as it is spelled in JSON, or as another layout has laid it out. */
    void spelled(String value) throws IOException {
        target.append(value);
    }

    /** Writes an array of values, each as it is spelled in JSON, on one line. */
    void arrayOfScalars(List<String> values) throws IOException {
        target.append('[').append(String.join(", ", values)).append(']');
    }

    /** A value from elsewhere; numbers and strings stay as they are spelled in the text. */
    void kept(JsonNode node, SourceText text) throws IOException {
        if (node instanceof ObjectNode object) {
            keptObject(object, text);
        } else if (node instanceof ArrayNode array) {
            keptArray(array, text);
        } else {
            spelled(text.text(node));
        }
    }

    private void keptObject(ObjectNode object, SourceText text) throws IOException {
        open('{');
        for (Member member : object.members()) {
            spelledKey(text.text().substring(member.keyStart(), member.keyEnd()));
            kept(member.value(), text);
        }
        close('}');
    }

    private void keptArray(ArrayNode array, SourceText text) throws IOException {
        if (array.values().stream().allMatch(Layout::isScalar)) {
            arrayOfScalars(array.values().stream().map(text::text).toList());
            return;
        }
        open('[');
        for (JsonNode value : array.values()) {
            next();
            kept(value, text);
        }
        close(']');
    }

    private void spelledKey(String key) throws IOException {
        next();
        target.append(key).append(": ");
    }

    private void newLine() throws IOException {
        target.append('\n');
        for (int i = 0; i < depth; i++) {
            target.append(INDENT);
        }
    }

    private static boolean isScalar(JsonNode node) {
        return !(node instanceof ObjectNode || node instanceof ArrayNode);
    }

    /** A value from elsewhere, laid out as if it stood alone. */
    static String alone(JsonNode node, SourceText text) {
        StringBuilder target = new StringBuilder();
        try {
            new Layout(target).kept(node, text);
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail to be written", e);
        }
        return target.toString();
    }

    /** A string with its quotes. A lone half of a surrogate pair is escaped, since UTF-8 cannot hold it. */
    static String string(String value) {
        return isPlain(value) ? '"' + value + '"' : escaped(value);
    }

    private static boolean isPlain(String value) {
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c < ' ' || c == '"' || c == '\\' || Character.isSurrogate(c)) {
                return false;
            }
        }
        return true;
    }

    private static String escaped(String value) {
        StringBuilder escaped = new StringBuilder("\"");
        new String(ENCODER.quoteAsString(value)).codePoints().forEach(c -> append(escaped, c));
        return escaped.append('"').toString();
    }

    private static void append(StringBuilder target, int codePoint) {
        if (codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE) {
            target.append(String.format("\\u%04X", codePoint));
        } else {
            target.appendCodePoint(codePoint);
        }
    }
}
