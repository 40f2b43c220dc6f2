/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Through;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.quantity.LengthUnit;

/** Puts a guide extension in place. */
public final class ExtensionPlace {
    private ExtensionPlace() {
    }

    /**
     * The extension in place, with a part of its tube in the outer device.
     *
     * @param reference that named it, and the lumen meant
     * @param protrusion how far its tip lies beyond the outer tip
     * @throws ReferenceException when it has no such lumen, or when its collar would not lie behind the outer tip
     */
    public static Through of(ReadDevice extension, LumenReference reference, Length protrusion) {
        Lumen lumen = reference.lumen(extension.device(), Direction.TIP_FIRST);
        if (lumen.length().compareTo(Length.ZERO) > 0 && protrusion.compareTo(lumen.proximalAt()) >= 0) {
            throw new ReferenceException("the tube of \"" + extension.device().id() + "\" is "
                    + mm(lumen.proximalAt()) + " long and cannot protrude by " + mm(protrusion));
        }
        return new Through(extension, lumen, protrusion);
    }

    private static String mm(Length length) {
        return LengthFormat.faithful(LengthUnit.MILLIMETRE).format(length);
    }
}
