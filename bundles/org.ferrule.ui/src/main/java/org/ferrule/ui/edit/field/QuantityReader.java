/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.jface.fieldassist.ContentProposal;
import org.eclipse.jface.fieldassist.IContentProposal;
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

    private static final List<String> LENGTHS = List.of("mm", "in", "Fr", "cm");
    private static final List<String> PRESSURES = List.of("atm", "bar", "kPa");
    private static final List<String> WORDS = List.of("min", "max", "nom", "measured");

    private final Function<String, Object> parser;
    private final Function<Object, List<QuantityWarning>> doubts;
    private final Function<Object, String> words;
    private final List<String> units;

    private QuantityReader(Function<String, Object> parser, Function<Object, List<QuantityWarning>> doubts,
            Function<Object, String> words, List<String> units) {
        this.parser = parser;
        this.doubts = doubts;
        this.words = words;
        this.units = units;
    }

    /** Returns the reader for the values of the attribute. */
    static QuantityReader of(EAttribute feature, FigureWords words) {
        Class<?> type = feature.getEAttributeType().getInstanceClass();
        Optional<FigureKind> kind = Features.figureKind(feature);
        if (type == Pressure.class) {
            return new QuantityReader(Pressure::parse, p -> ((Pressure) p).warnings(), p -> kilopascals((Pressure) p),
                    PRESSURES);
        }
        if (type == Offset.class) {
            return new QuantityReader(Offset::parse, o -> List.of(), o -> words.of(((Offset) o).value(), null),
                    LENGTHS);
        }
        return new QuantityReader(Dimension::parse,
                d -> kind.map(((Dimension) d)::warnings).orElse(List.of()),
                d -> words.of((Dimension) d, kind.orElse(null)), LENGTHS);
    }

    private static String kilopascals(Pressure pressure) {
        return pressure.pascals().movePointLeft(3).setScale(0, RoundingMode.HALF_EVEN).toPlainString()
                + " kPa  \u00b7  "
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

    /** Proposes what may follow the text before the cursor: a unit after a number, a word after a unit. */
    IContentProposal[] proposals(String contents, int position) {
        String before = contents.substring(0, position);
        String start = before.replaceFirst("(?s).*[\\d.\\s]", "");
        boolean afterUnit = units.stream().anyMatch(unit -> before.matches("(?s).*\\d\\s*" + unit + "\\s+\\w*"));
        String gap = before.isEmpty() || before.endsWith(" ") || !start.isEmpty() ? "" : " ";
        List<IContentProposal> found = new ArrayList<>();
        Stream<String> candidates = (afterUnit && units == LENGTHS ? WORDS : units).stream();
        candidates.filter(word -> word.startsWith(start) && !word.equals(start))
                .forEach(word -> found.add(proposal(gap + word.substring(start.length()), word)));
        return found.toArray(IContentProposal[]::new);
    }

    private static IContentProposal proposal(String inserted, String word) {
        return new ContentProposal(inserted, word, null, inserted.length());
    }
}
