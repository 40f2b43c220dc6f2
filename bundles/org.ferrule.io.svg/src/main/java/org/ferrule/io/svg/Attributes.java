/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.ferrule.picture.Box;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Stroke;

/** Attributes of an element, in the order in which they were added. */
final class Attributes {

    static final Attributes NONE = new Attributes();

    private final Map<String, String> values = new LinkedHashMap<>();

    Map<String, String> values() {
        return values;
    }

    Attributes add(String name, String value) {
        values.put(name, value);
        return this;
    }

    Attributes add(String name, Optional<String> value) {
        value.ifPresent(present -> add(name, present));
        return this;
    }

    Attributes mm(String name, double value) {
        return add(name, Numbers.mm(value));
    }

    Attributes box(Box box) {
        return mm("x", box.xMm()).mm("y", box.yMm()).mm("width", box.widthMm()).mm("height", box.heightMm());
    }

    Attributes fill(Optional<Ink> ink) {
        return add("fill", ink.map(Ink::hex).orElse("none"));
    }

    /** Only what differs from the usual: solid, cut off at the ends. */
    Attributes stroke(Stroke stroke) {
        add("stroke", stroke.ink().hex()).mm("stroke-width", stroke.widthMm());
        if (!stroke.dash().isSolid()) {
            add("stroke-dasharray", Numbers.list(stroke.dash().lengthsMm()));
        }
        if (stroke.ends() == Stroke.Ends.ROUND) {
            add("stroke-linecap", "round").add("stroke-linejoin", "round");
        }
        return this;
    }

    /** These attributes, to go on from, while these stay as they are. */
    Attributes copy() {
        Attributes copy = new Attributes();
        copy.values.putAll(values);
        return copy;
    }
}
