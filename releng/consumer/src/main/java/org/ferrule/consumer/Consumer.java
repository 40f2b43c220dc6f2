/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.consumer;

import java.util.Locale;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Says by how much two printed figures differ. */
public final class Consumer {

    private Consumer() {
    }

    /**
     * Prints the difference of a lumen and what is to lie in it, as labelled.
     *
     * @param words the inner diameter and the outer diameter as printed
     */
    public static void main(String... words) {
        Length lumen = Dimension.parse(words[0]).label();
        Length device = Dimension.parse(words[1]).label();
        Length room = lumen.minus(device);
        System.out.printf(Locale.ROOT, "%s less %s leaves %.4f mm%n", words[0], words[1],
                room.in(LengthUnit.MILLIMETRE));
    }
}
