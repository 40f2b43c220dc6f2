/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.samples;

import org.ferrule.model.Lumen;
import org.ferrule.model.LumenOpening;
import org.ferrule.model.LumenSection;
import org.ferrule.model.LumenUse;
import org.ferrule.model.ModelFactory;
import org.ferrule.quantity.Dimension;

/** The lumen for a wire of a balloon with a side port, the same in all sample documents. */
final class WireLumen {

    private WireLumen() {
    }

    static Lumen create() {
        Lumen lumen = ModelFactory.eINSTANCE.createLumen();
        lumen.setName("wire");
        lumen.setUse(LumenUse.WIRE);
        lumen.setOpens(LumenOpening.SIDE_PORT);
        lumen.setProximalAt(Dimension.parse("25 cm"));
        LumenSection section = ModelFactory.eINSTANCE.createLumenSection();
        section.setId(Dimension.parse("0.0165 in"));
        lumen.getSections().add(section);
        return lumen;
    }
}
