/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.Arrays;
import java.util.Optional;

/** Where an object of a document and its keys stand in the text: offsets from 0, packed, since there are many objects. */
final class ObjectPlace {

    private static final int WIDTH = 4;

    private final int start;
    private final int end;
    private int[] members = {};

    /** Creates the place of an object of which no key is known. */
    ObjectPlace(JsonNode node) {
        this.start = node.start();
        this.end = node.end();
    }

    /** Where a key and its value stand; ends exclusive. */
    record MemberPlace(int keyStart, int valueStart, int valueEnd) {
    }

    int start() {
        return start;
    }

    int end() {
        return end;
    }

    /** Adds the place of the key of a feature. */
    void add(int featureId, JsonNode.Member member) {
        int at = members.length;
        members = Arrays.copyOf(members, at + WIDTH);
        members[at] = featureId;
        members[at + 1] = member.keyStart();
        members[at + 2] = member.value().start();
        members[at + 3] = member.value().end();
    }

    /** Returns where the key of a feature stands; nothing if it is not there. */
    Optional<MemberPlace> member(int featureId) {
        for (int i = 0; i < members.length; i += WIDTH) {
            if (members[i] == featureId) {
                return Optional.of(new MemberPlace(members[i + 1], members[i + 2], members[i + 3]));
            }
        }
        return Optional.empty();
    }
}
