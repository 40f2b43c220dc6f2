/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Repairs of the units of a dimension. */
final class UnitRepairs {
    private static final Pattern UNIT = Pattern.compile("(?<=\\d)(\\s*)(\\p{L}+|'')(?:\\.(?![.\\d]))?");
    private static final Pattern METRES = Pattern.compile("(?<=\\d)(\\s*)(mm?)(?![\\p{L}])");
    private static final Pattern BARE = Pattern.compile("\\s*(\\d+(?:\\.\\d+)?)\\s*((?:min|max|nom|measured)?)\\s*");
    /** Small letters, without a full stop. */
    private static final Map<String, LengthUnit> SPELLINGS = Map.ofEntries(Map.entry("mm", LengthUnit.MILLIMETRE),
            Map.entry("mms", LengthUnit.MILLIMETRE), Map.entry("millimeter", LengthUnit.MILLIMETRE),
            Map.entry("millimeters", LengthUnit.MILLIMETRE), Map.entry("millimetre", LengthUnit.MILLIMETRE),
            Map.entry("millimetres", LengthUnit.MILLIMETRE), Map.entry("cm", LengthUnit.CENTIMETRE),
            Map.entry("cms", LengthUnit.CENTIMETRE), Map.entry("centimeter", LengthUnit.CENTIMETRE),
            Map.entry("centimeters", LengthUnit.CENTIMETRE), Map.entry("centimetre", LengthUnit.CENTIMETRE),
            Map.entry("centimetres", LengthUnit.CENTIMETRE), Map.entry("um", LengthUnit.MICROMETRE),
            Map.entry("micron", LengthUnit.MICROMETRE), Map.entry("microns", LengthUnit.MICROMETRE),
            Map.entry("in", LengthUnit.INCH), Map.entry("ins", LengthUnit.INCH), Map.entry("inch", LengthUnit.INCH),
            Map.entry("inchs", LengthUnit.INCH), Map.entry("inches", LengthUnit.INCH),
            Map.entry("''", LengthUnit.INCH), Map.entry("f", LengthUnit.FRENCH), Map.entry("fr", LengthUnit.FRENCH),
            Map.entry("frs", LengthUnit.FRENCH), Map.entry("french", LengthUnit.FRENCH),
            Map.entry("ch", LengthUnit.FRENCH), Map.entry("charriere", LengthUnit.FRENCH));
    /** What labels of this trade print (common practice). */
    private static final List<LengthUnit> OF_LABELS = List.of(LengthUnit.MILLIMETRE, LengthUnit.INCH,
            LengthUnit.FRENCH);

    private UnitRepairs() {
    }

    /** Spells every unit that is known by another spelling as Ferrule writes it; nothing if all are already. */
    static Optional<String> spelling(String text) {
        String spelled = UNIT.matcher(text).replaceAll(UnitRepairs::spelled);
        return spelled.equals(text) ? Optional.empty() : Optional.of(spelled);
    }

    private static String spelled(MatchResult unit) {
        LengthUnit known = SPELLINGS.get(unit.group(2).toLowerCase(Locale.ROOT));
        return Matcher.quoteReplacement(known == null ? unit.group() : unit.group(1) + known.symbol());
    }

    /** Takes metres for millimetres and the other way round: one letter m too few, or too many. */
    static Optional<String> doubledLetter(String text) {
        String other = METRES.matcher(text)
                .replaceAll(unit -> unit.group(1) + ("m".equals(unit.group(2)) ? "mm" : "m"));
        return other.equals(text) ? Optional.empty() : Optional.of(other);
    }

    /** Gives a bare number the only unit of labels in which it is plausible; nothing if several are, or none. */
    static Optional<String> missing(String text, FigureKind kind) {
        Matcher bare = BARE.matcher(text);
        if (!bare.matches()) {
            return Optional.empty();
        }
        List<LengthUnit> plausible = units(kind)
                .filter(unit -> Dimension.lenient(bare.group(1) + " " + unit.symbol()).warnings(kind).isEmpty())
                .toList();
        return plausible.size() == 1
                ? Optional.of((bare.group(1) + " " + plausible.get(0).symbol() + " " + bare.group(2)).strip())
                : Optional.empty();
    }

    /** French is a unit of diameters. */
    private static Stream<LengthUnit> units(FigureKind kind) {
        boolean diameter = kind == FigureKind.INNER_DIAMETER || kind == FigureKind.OUTER_DIAMETER;
        return OF_LABELS.stream().filter(unit -> diameter || unit != LengthUnit.FRENCH);
    }
}
