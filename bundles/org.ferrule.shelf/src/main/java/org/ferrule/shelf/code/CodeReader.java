/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import java.time.LocalDate;
import java.util.Set;

/**
 * Reads the code on a box, from a scanner or from a keyboard. What scanners add is left out: blanks, line ends and
 * transmission characters around the code, a symbology identifier (ISO/IEC 15424) in front of it. A group separator may
 * be sent as such or as {@code ^]}, {@code <GS>}, {@code {GS}}, {@code [GS]}, {@code <FNC1>}, {@code {FNC1}},
 * {@code \x1D} or its picture in Unicode.
 */
public final class CodeReader {
    private static final int PREFIX = 3;

    /** Symbologies that say themselves that a GS1 element string follows. */
    private static final Set<String> GS1_PREFIXES = Set.of("]d2", "]C1", "]Q3", "]e0", "]J1");

    /** Symbologies that carry a bare GTIN. */
    private static final Set<String> GTIN_PREFIXES = Set.of("]E0", "]E4", "]I0", "]I1");

    /** Symbologies that say nothing of what they carry: an HIBC code, or nothing that is known here. */
    private static final Set<String> PLAIN_PREFIXES = Set.of("]A0", "]A1", "]C0", "]d1", "]Q1", "]L0", "]L2", "]z0",
            "]F0");

    private CodeReader() {
    }

    /**
     * Reads a code. A text of 8, 12, 13 or 14 digits alone is a GTIN and nothing else.
     *
     * @param text as scanned, typed or pasted
     * @param today the day from which years of two digits are counted
     * @throws CodeException naming the text, the place and what was expected there
     */
    public static ProductCode read(String text, LocalDate today) throws CodeException {
        CodeText given = CodeText.of(text);
        if (given.length() == 0) {
            throw given.fault(CodeFault.EMPTY, 0, "a code");
        }
        if (given.at(0) != ']') {
            return bare(given, today);
        }
        String prefix = given.part(0, Math.min(PREFIX, given.length()));
        CodeText rest = given.between(prefix.length(), given.length());
        if (rest.length() == 0) {
            throw rest.fault(CodeFault.EMPTY, 0, "a code behind the symbology identifier " + prefix);
        }
        if (GS1_PREFIXES.contains(prefix)) {
            return Gs1Reader.raw(rest, today);
        }
        boolean known = PLAIN_PREFIXES.contains(prefix) && isHibc(rest)
                || GTIN_PREFIXES.contains(prefix) && isGtin(rest);
        if (!known) {
            throw given.fault(CodeFault.NO_CODE, 0, "a symbology identifier that goes with what follows it: "
                    + "]d2, ]C1, ]Q3, ]e0 or ]J1 before GS1 element strings");
        }
        return bare(rest, today);
    }

    private static ProductCode bare(CodeText text, LocalDate today) throws CodeException {
        if (isHibc(text)) {
            return HibcReader.read(text, today);
        }
        if (text.at(0) == '(') {
            return Gs1Reader.printed(text, today);
        }
        if (isGtin(text)) {
            CodeParts parts = new CodeParts();
            parts.di.set(Gtin.read(text, 0, text.length()), text, 0);
            return parts.code(Scheme.GS1);
        }
        if (!Digits.is(text.at(0)) && text.withSeparators().at(0) != CodeText.SEPARATOR) {
            throw text.fault(CodeFault.NO_CODE, 0, "digits or a bracket (GS1), or a plus (HIBC)");
        }
        return Gs1Reader.raw(text, today);
    }

    private static boolean isHibc(CodeText text) {
        return text.startsWith("+", 0) || text.startsWith("*", 0);
    }

    private static boolean isGtin(CodeText text) {
        int length = text.length();
        return (length == 8 || length >= 12 && length <= Gtin.DIGITS) && Digits.areAll(text.toString());
    }
}
