/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

import org.ferrule.io.json.JsonNode.ArrayNode;
import org.ferrule.io.json.JsonNode.Member;
import org.ferrule.io.json.JsonNode.ObjectNode;

import com.fasterxml.jackson.core.io.JsonStringEncoder;

/**
 * The canonical layout: two spaces, LF, an object one key per line, an array of scalars on one line. Every method
 * returns a text laid out as if it stood alone; whoever holds it indents it.
 */
final class Layout {

    private static final JsonStringEncoder ENCODER = JsonStringEncoder.getInstance();

    private Layout() {
    }

    /** An object from its entries, each made by {@link #entry}. */
    static String object(Collection<String> entries) {
        return lines("{", entries, "}");
    }

    static String entry(String key, String value) {
        return string(key) + ": " + value;
    }

    static String arrayOfObjects(Collection<String> values) {
        return lines("[", values, "]");
    }

    static String arrayOfScalars(Collection<String> values) {
        return "[" + String.join(", ", values) + "]";
    }

    /** A string with its quotes. A lone half of a surrogate pair is escaped, since UTF-8 cannot hold it. */
    static String string(String value) {
        StringBuilder escaped = new StringBuilder("\"");
        new String(ENCODER.quoteAsString(value)).codePoints().forEach(c -> append(escaped, c));
        return escaped.append('"').toString();
    }

    /** A value from elsewhere in this layout; numbers and strings stay as they are spelled in the text. */
    static String kept(JsonNode node, SourceText text) {
        if (node instanceof ObjectNode object) {
            return object(object.members().stream().map(member -> kept(member, text)).toList());
        }
        if (node instanceof ArrayNode array) {
            List<String> values = array.values().stream().map(value -> kept(value, text)).toList();
            return array.values().stream().allMatch(Layout::isScalar) ? arrayOfScalars(values) : arrayOfObjects(values);
        }
        return text.text(node);
    }

    private static String kept(Member member, SourceText text) {
        return text.text().substring(member.keyStart(), member.keyEnd()) + ": " + kept(member.value(), text);
    }

    private static boolean isScalar(JsonNode node) {
        return !(node instanceof ObjectNode || node instanceof ArrayNode);
    }

    private static void append(StringBuilder target, int codePoint) {
        if (codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE) {
            target.append(String.format("\\u%04X", codePoint));
        } else {
            target.appendCodePoint(codePoint);
        }
    }

    private static String lines(String open, Collection<String> parts, String close) {
        return parts.isEmpty() ? open + close
                : parts.stream().map(part -> "  " + part.replace("\n", "\n  "))
                        .collect(Collectors.joining(",\n", open + "\n", "\n" + close));
    }
}
