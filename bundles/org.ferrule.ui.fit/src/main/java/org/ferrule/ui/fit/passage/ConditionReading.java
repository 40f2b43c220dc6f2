/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.math.BigDecimal;
import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.chart.ExtensionPlace;
import org.ferrule.engine.chart.LumenReference;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.passage.Bend.Where;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Through;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Offset;
import org.ferrule.ui.fit.passage.PassageConditions.Bent;

/** Reads what else holds in the daily question. */
final class ConditionReading {

    private final Catalogue catalogue;
    private final RuleSet rules;

    ConditionReading(Catalogue catalogue, RuleSet rules) {
        this.catalogue = catalogue;
        this.rules = rules;
    }

    /**
     * Returns the conditions as they are asked.
     *
     * @throws IllegalArgumentException saying which text cannot be read
     * @throws org.ferrule.engine.catalogue.ReferenceException when a device is not found or not in place
     */
    Conditions read(PassageConditions asked) {
        return new Conditions(
                asked.beside().stream().map(each -> new Occupant(device(each.device()), place(each.tipAhead()),
                        each.used())).toList(),
                Optional.of(asked.extension()).filter(reference -> !reference.isEmpty())
                        .map(reference -> through(reference, place(asked.protrusion()))),
                asked.bend().map(ConditionReading::bend).stream().toList(), asked.afterInflation());
    }

    private ReadDevice device(String reference) {
        return ReadDevice.of(catalogue.device(reference).device(), rules);
    }

    private Through through(String reference, Length protrusion) {
        return ExtensionPlace.of(device(reference), new LumenReference(reference, Optional.empty()), protrusion);
    }

    private static Bend bend(Bent bent) {
        return new Bend(bent.vessel() ? Where.VESSEL : Where.LUMEN, Dimension.parse(bent.radius()).label(),
                Optional.of(bent.degrees()).filter(text -> !text.isBlank()).map(ConditionReading::degrees),
                Optional.of(bent.width()).filter(text -> bent.vessel() && !text.isBlank())
                        .map(text -> Dimension.parse(text).label()));
    }

    private static BigDecimal degrees(String text) {
        try {
            return new BigDecimal(text.strip());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("The angle of the bend is no number of degrees: \"" + text + "\"", e);
        }
    }

    /** At the outer tip, if nothing is said. */
    private static Length place(String text) {
        return text.isBlank() ? Length.ZERO : Offset.parse(text).value();
    }
}
