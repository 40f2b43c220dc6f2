/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.ecore.EAttribute;
import org.ferrule.model.Features;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.FigureKind;
import org.ferrule.quantity.Offset;
import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.PressureUnit;
import org.ferrule.quantity.QuantitySyntaxException;
import org.ferrule.quantity.QuantityWarning;
import org.ferrule.ui.preferences.FigureWords;

/** Reads one kind of quantity and says what it amounts to. */
final class QuantityReader {

    private final Function<String, Object> parser;
    private final Function<Object, List<QuantityWarning>> doubts;
    private final Function<Object, String> words;
    private final FigureProposals proposals;

    private QuantityReader(Function<String, Object> parser, Function<Object, List<QuantityWarning>> doubts,
            Function<Object, String> words, FigureProposals proposals) {
        this.parser = parser;
        this.doubts = doubts;
        this.words = words;
        this.proposals = proposals;
    }

    /** Returns the reader for the values of the attribute. */
    static QuantityReader of(EAttribute feature, FigureWords words) {
        Class<?> type = feature.getEAttributeType().getInstanceClass();
        Optional<FigureKind> kind = Features.figureKind(feature);
        if (type == Pressure.class) {
            return new QuantityReader(Pressure::parse, p -> ((Pressure) p).warnings(), p -> kilopascals((Pressure) p),
                    FigureProposals.ofPressure(Pressure::parse));
        }
        if (type == Offset.class) {
            return new QuantityReader(Offset::parse, o -> List.of(), o -> words.of(((Offset) o).value(), null),
                    FigureProposals.ofOffset(Offset::parse));
        }
        return new QuantityReader(Dimension::parse,
                d -> kind.map(((Dimension) d)::warnings).orElse(List.of()),
                d -> words.of((Dimension) d, kind.orElse(null)), FigureProposals.ofDimension(Dimension::parse));
    }

    private static String kilopascals(Pressure pressure) {
        return pressure.pascals().movePointLeft(3).setScale(0, RoundingMode.HALF_EVEN).toPlainString()
                + " kPa" + FigureWords.BETWEEN_UNITS
                + String.format(Locale.ROOT, "%.1f atm", pressure.in(PressureUnit.ATMOSPHERE));
    }

    Reading read(String typed) {
        try {
            Object value = parser.apply(typed.trim());
            return new Reading(value,
                    doubts.apply(value).stream().findFirst().map(doubt -> InputProblem.of(doubt, typed.trim())));
        } catch (QuantitySyntaxException e) {
            return Reading.unreadable(InputProblem.of(e));
        }
    }

    String meaning(Object value) {
        return isReadable(value) ? words.apply(value) : "";
    }

    private static boolean isReadable(Object value) {
        return value instanceof Dimension dimension ? dimension.readable()
                : value instanceof Pressure pressure ? pressure.readable() : ((Offset) value).readable();
    }

    /** Returns what proposes how to go on typing. */
    FigureProposals proposals() {
        return proposals;
    }
}
