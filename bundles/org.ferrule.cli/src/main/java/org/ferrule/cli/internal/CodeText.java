/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.shelf.code.Element;
import org.ferrule.shelf.code.ProductCode;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What the codes on a box say, as lines and as JSON. */
public final class CodeText {
    private CodeText() {
    }

    /** One line a part; parts that are not there have none. */
    public static List<String> lines(ProductCode code) {
        List<String> lines = new ArrayList<>();
        lines.add("scheme: " + code.scheme());
        add(lines, "product", code.di());
        add(lines, "lot", code.lot());
        add(lines, "serial no.", code.serial());
        add(lines, "use by", code.expiry());
        add(lines, "made", code.made());
        add(lines, "quantity", code.quantity());
        for (Element element : code.others()) {
            lines.add("(" + element.id() + "): " + element.value());
        }
        return lines;
    }

    private static void add(List<String> lines, String what, Optional<?> value) {
        value.ifPresent(v -> lines.add(what + ": " + v));
    }

    /** All parts; null where one is not there. */
    public static ObjectNode json(ProductCode code) {
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("scheme", code.scheme().name())
                .put("di", code.di().orElse(null)).put("lot", code.lot().orElse(null))
                .put("serial", code.serial().orElse(null)).put("expiry", code.expiry().map(Object::toString).orElse(null))
                .put("made", code.made().map(Object::toString).orElse(null))
                .put("quantity", code.quantity().orElse(null));
        ArrayNode others = node.putArray("others");
        code.others().forEach(element -> others.addObject().put("id", element.id()).put("value", element.value()));
        return node;
    }
}
