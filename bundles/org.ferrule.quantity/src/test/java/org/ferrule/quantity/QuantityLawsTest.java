/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import static org.quicktheories.QuickTheory.qt;
import static org.quicktheories.generators.SourceDSL.arbitrary;
import static org.quicktheories.generators.SourceDSL.integers;
import static org.quicktheories.generators.SourceDSL.lists;
import static org.quicktheories.generators.SourceDSL.longs;
import static org.quicktheories.generators.SourceDSL.strings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.quicktheories.QuickTheory;
import org.quicktheories.core.Gen;

/** Laws that hold for every quantity, under locales whose digits, commas and letters differ. */
class QuantityLawsTest {
    /** Up to about 3 m, as fine as a third of a nanometre. */
    private static final Gen<Length> LENGTHS = longs().between(0, 10_000_000_000L).map(Length::new);
    private static final Gen<Length> CLEARANCES = longs().between(-3_000_000L, 3_000_000L).map(Length::new);
    private static final Gen<LengthUnit> UNITS = arbitrary().enumValues(LengthUnit.class);
    private static final Gen<Integer> DECIMALS = integers().between(0, 6);

    private final Locale before = Locale.getDefault();

    @AfterEach
    void restoreLocale() {
        Locale.setDefault(before);
    }

    /** Returns the theories, with examples that are the same every time unless QT_SEED says otherwise. */
    private static QuickTheory laws() {
        return System.getProperty("QT_SEED") == null ? qt().withFixedSeed(20261125) : qt();
    }

    private static void use(String locale) {
        Locale.setDefault(Locale.forLanguageTag(locale));
    }

    @ParameterizedTest
    @ValueSource(strings = { "de", "tr", "ar-EG-u-nu-arab", "en" })
    void readsWhatItWrites(String locale) {
        use(locale);
        laws().forAll(LENGTHS, UNITS).check((length, unit) -> Dimension.of(length, unit).label().equals(length)
                && Dimension.of(length, unit).unit() == unit);
    }

    @ParameterizedTest
    @ValueSource(strings = { "de", "tr", "ar-EG-u-nu-arab", "en" })
    void signedFormatReadsAsOffset(String locale) {
        use(locale);
        laws().forAll(CLEARANCES, UNITS).check((length, unit) -> Offset
                .parse(LengthFormat.faithful(unit).format(length)).value().equals(length));
    }

    @ParameterizedTest
    @ValueSource(strings = { "de", "tr", "ar-EG-u-nu-arab", "en" })
    void wordsAndUnitsDoNotDependOnLocale(String locale) {
        use(locale);
        laws().forAll(integers().between(1, 9999), DECIMALS).check((digits, decimals) -> {
            String number = new BigDecimal(digits).movePointLeft(decimals).toPlainString();
            Dimension upper = Dimension.parse(number + " IN MIN");
            Dimension lower = Dimension.parse(number + " in min");
            return upper.meaning() == Meaning.MINIMUM && upper.low().equals(lower.low());
        });
    }

    @ParameterizedTest
    @ValueSource(strings = { "de", "en" })
    void clearanceIsNeverWrittenLarger(String locale) {
        use(locale);
        laws().forAll(CLEARANCES, UNITS, DECIMALS).check((clearance, unit, decimals) -> {
            String written = LengthFormat.clearance(unit, decimals).number(clearance);
            return written.startsWith("<") ? clearance.compareTo(Length.of(written.substring(1), unit)) < 0
                    : new BigDecimal(written).compareTo(clearance.in(unit, 12, RoundingMode.CEILING)) <= 0;
        });
    }

    @ParameterizedTest
    @ValueSource(strings = { "de", "en" })
    void lengthThatIsNotZeroIsNeverWrittenAsZero(String locale) {
        use(locale);
        laws().forAll(CLEARANCES, UNITS, DECIMALS).check((length, unit, decimals) -> {
            String written = LengthFormat.plain(unit, decimals).number(length);
            return written.matches("[-0.]+") == length.equals(Length.ZERO);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = { "de", "en" })
    void anyTextIsKeptAndNeverThrows(String locale) {
        use(locale);
        laws().forAll(strings().basicMultilingualPlaneAlphabet().ofLengthBetween(0, 20)).check(text -> {
            Dimension dimension = Dimension.lenient(text);
            return dimension.text().equals(text) && Pressure.lenient(text).text().equals(text)
                    && Offset.lenient(text).text().equals(text)
                    && dimension.problem().stream().allMatch(e -> e.position() >= 0 && e.position() <= text.length());
        });
    }

    @ParameterizedTest
    @ValueSource(strings = { "de", "en" })
    void shuffledGrammarIsReadOrRefusedWithPlace(String locale) {
        use(locale);
        String[] pieces = { "0.070", "1.78", "3", " ", "in", "mm", "\"", "Fr", "min", "max", "sd", "n", "±", "+", "-",
            "/", "(", ")", "..", ",", "." };
        Gen<String> piece = integers().between(0, pieces.length - 1).map(i -> pieces[i]);
        Gen<String> text = lists().of(piece).ofSizeBetween(1, 9)
                .map(list -> String.join("", list));
        laws().withExamples(20_000).forAll(text).check(t -> {
            Dimension dimension = Dimension.lenient(t);
            return dimension.readable() ? isSound(dimension) : dimension.problem().get().position() <= t.length();
        });
    }

    private static boolean isSound(Dimension dimension) {
        Length low = dimension.low().orElse(dimension.label());
        Length high = dimension.high().orElse(dimension.label());
        dimension.warnings(FigureKind.OUTER_DIAMETER);
        return !low.isNegative() && low.compareTo(dimension.label()) <= 0 && dimension.label().compareTo(high) <= 0;
    }
}
