/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import org.ferrule.shelf.code.ProductCode;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What a code on a box says, as one JSON object. */
public final class CodeJson {
    private CodeJson() {
    }

    /** Writes it; what the code does not say is left out. */
    public static ObjectNode write(ProductCode code) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("scheme", code.scheme().name());
        code.di().ifPresent(di -> node.put("di", di));
        code.lot().ifPresent(lot -> node.put("lot", lot));
        code.serial().ifPresent(serial -> node.put("serial", serial));
        code.expiry().ifPresent(expiry -> node.put("expiry", expiry.toString()));
        code.made().ifPresent(made -> node.put("made", made.toString()));
        code.quantity().ifPresent(quantity -> node.put("quantity", quantity));
        ObjectNode others = JsonNodeFactory.instance.objectNode();
        code.others().forEach(element -> others.put(element.id(), element.value()));
        if (!others.isEmpty()) {
            node.set("others", others);
        }
        return node;
    }
}
