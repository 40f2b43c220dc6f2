/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.List;

/** A JSON value with its place in the text: offsets from 0, the end exclusive. */
sealed interface JsonNode {

    int start();

    int end();

    /** Says in words what it is, for messages. */
    String words();

    /** An object; members in the order of the text, duplicates included. */
    record ObjectNode(int start, int end, List<Member> members) implements JsonNode {
        @Override
        public String words() {
            return "an object";
        }
    }

    /** A key with its value; the key's region includes its quotes. */
    record Member(int keyStart, int keyEnd, String key, JsonNode value) {
    }

    /** An array. */
    record ArrayNode(int start, int end, List<JsonNode> values) implements JsonNode {
        @Override
        public String words() {
            return "an array";
        }
    }

    /** A string; the region includes its quotes. */
    record StringNode(int start, int end, String value) implements JsonNode {
        @Override
        public String words() {
            return "the text \"" + value + "\"";
        }
    }

    /** A number, as it is spelled. */
    record NumberNode(int start, int end, String spelling) implements JsonNode {
        @Override
        public String words() {
            return "the number " + spelling;
        }
    }

    /** One of true, false and null. */
    record WordNode(int start, int end, String words) implements JsonNode {
    }
}
