/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.ferrule.fit.verdict.Reason.clearance;
import static org.ferrule.fit.verdict.Reason.count;
import static org.ferrule.fit.verdict.Reason.distance;
import static org.ferrule.fit.verdict.Reason.name;
import static org.ferrule.fit.verdict.Reason.source;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ReasonWordsTest {
    private static final ReasonWords WORDS = ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));

    private static String said(Reason reason) {
        return WORDS.say(reason, SampleReasons.PAIR);
    }

    @ParameterizedTest
    @EnumSource(ReasonCode.class)
    void everyCodeIsSaidInWords(ReasonCode code) {
        for (String words : List.of(said(SampleReasons.of(code)),
                WORDS.note(SampleReasons.of(code), SampleReasons.answer(code), SampleReasons.PAIR))) {
            assertFalse(words.isBlank());
            assertFalse(words.matches(".*[\\[\\]{}].*"), words);
            assertFalse(words.contains("g6") || words.contains("b2"), "names and not ids: " + words);
        }
    }

    /** A number that a reader cannot see cannot be checked: only the label compared and inner ends may be left out. */
    @ParameterizedTest
    @EnumSource(ReasonCode.class)
    void everyTemplateUsesItsArguments(ReasonCode code) {
        Reason reason = SampleReasons.of(code);
        Template template = new Template(WORDS.template(reason, SampleReasons.PAIR, ""));
        Set<Integer> used = template.places().stream().map(Template.Place::index).collect(Collectors.toSet());
        int leftOut = code == ReasonCode.AFTER_USE_ASSUMED ? 1 : 0;
        assertEquals(reason.arguments().size() - leftOut, used.size(), template.places().toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "STOPS_SHORT | Stops 31.4 cm short: proximal shaft 1.07 mm in a 1.02 mm lumen",
        "LESS_THAN_REQUIRED | In the worst case 0.03 mm is left where 0.05 mm is asked for: balloon in the "
                + "working lumen",
        "TOO_SHORT | Too short by 5.6 cm: 135.0 cm can be inserted, 140.5 cm is needed",
        "RIGID_STOPS_IN_BEND | Stops in the bend of radius 2.0 cm: the burr is rigid over 1.0 cm, the longest that "
                + "passes is 9.7 mm",
        "VESSEL_MUST_STRAIGHTEN | The vessel must straighten from a radius of 1.0 cm to one of 2.2 cm for the stent, "
                + "rigid over 1.8 cm",
        "FLOW_MAY_BE_LOW | Flow for contrast: where the devices lie worst, 13 % of the empty lumen’s flow is left, "
                + "30 % is asked for (Sheet 12, rev. B, p. 4)",
        "CHANCE_TOO_HIGH | The chance of an overlap is up to 0.37 %, 0.1 % is allowed (Sheet 12, rev. B, p. 4)",
        "MISSING_FIGURE | Lutra balloon: no outer diameter is stated for the window",
        "CLAIM_SAYS_NO | Lutra balloon asks for a lumen of 0.070 in min; this lumen is labelled 1.78 mm "
                + "(Sheet 12, rev. B, p. 4)",
        "CLAIM_NAMES_PARTNER | Halden guide is claimed to go with its partner (Sheet 12, rev. B, p. 4)",
        "BENCH_PASSED | Passed on the bench, 5 samples (Sheet 12, rev. B, p. 4)",
        "YES_AGAINST_GEOMETRY | A “yes” stands against the geometry, whose nominal clearance is -0.05 mm" })
    void saysItPlainly(ReasonCode code, String words) {
        assertEquals(words, said(SampleReasons.of(code)));
    }

    /** A footnote for each device that leaves another share would fill the paper, one row of cells a page. */
    @ParameterizedTest
    @CsvSource({ "0.0901, 0.0672", "0.0231, 0.1999" })
    void devicesThatLeaveTooLittleFlowShareAFootnote(double one, double other) {
        assertEquals(flowNote(one), flowNote(other));
        assertTrue(flowNote(one).startsWith("Flow for contrast: even at best less than 30 % of"), flowNote(one));
    }

    private static String flowNote(double share) {
        ReasonCode code = ReasonCode.FLOW_TOO_LOW;
        return WORDS.note(Reason.of(code, name("contrast"), Reason.share(share), Reason.share(0.3),
                source(SourceRef.NONE)), SampleReasons.answer(code), SampleReasons.PAIR);
    }

    @Test
    void roundsDevicesUpAndLumensDown() {
        assertEquals("Lutra balloon, balloon: “0.82 mm” is taken as 0.79 mm to 0.91 mm (Sheet 12, rev. B, p. 4)",
                said(SampleReasons.of(ReasonCode.SPAN_ASSUMED)));
    }

    @Test
    void leavesOutWhatIsEmpty() {
        assertEquals("Passed on the bench", said(Reason.of(ReasonCode.BENCH_PASSED, count(0), source(SourceRef.NONE))));
        assertEquals("Passed on the bench, 1 sample",
                said(Reason.of(ReasonCode.BENCH_PASSED, count(1), source(SourceRef.NONE))));
    }

    @Test
    void namesSectionsThatHaveNoName() {
        Reason reason = Reason.of(ReasonCode.ENOUGH_CLEARANCE, clearance(mm(0.2)), clearance(mm(0.05)), name(""),
                name(""));
        assertTrue(said(reason).endsWith("shaft in the lumen"), said(reason));
    }

    @Test
    void callsANegativeClearanceAnOverlapAndRoundsItUp() {
        Reason reason = Reason.of(ReasonCode.LESS_THAN_REQUIRED, clearance(mm(-0.0301)), clearance(mm(0.05)),
                name("balloon"), name("working lumen"));
        assertEquals("In the worst case there is an overlap of 0.04 mm: balloon in the working lumen", said(reason));
    }

    @Test
    void namesTheWireThatLiesBesideTheSectionThatDecides() {
        assertEquals("Stops 31.4 cm short: proximal shaft with its wire 1.07 mm in a 1.02 mm lumen",
                WORDS.say(SampleReasons.of(ReasonCode.STOPS_SHORT),
                        SampleReasons.answer(ReasonCode.STOPS_SHORT, ReasonCode.OWN_WIRE_BESIDE), SampleReasons.PAIR));
    }

    /** The figure is that of all together: a stent alone is not as thick as that. */
    @Test
    void tellsThatTheFigureHoldsForAllThatLieSideBySide() {
        assertEquals("Stops 31.4 cm short: proximal shaft with what lies beside it 1.07 mm in a 1.02 mm lumen",
                WORDS.say(SampleReasons.of(ReasonCode.STOPS_SHORT), SampleReasons.answer(ReasonCode.STOPS_SHORT,
                        ReasonCode.OWN_WIRE_BESIDE, ReasonCode.LIES_BESIDE), SampleReasons.PAIR));
    }

    @Test
    void wireOfAnotherDeviceIsNotThatOfTheSectionThatDecides() {
        PhaseAnswer beside = new PhaseAnswer(Verdict.BLOCKED, Authority.GEOMETRY, Verdict.BLOCKED, Optional.empty(),
                Optional.empty(), Optional.empty(),
                List.of(Reason.of(ReasonCode.OWN_WIRE_BESIDE, name("m26"), Reason.diameter(mm(0.36)))));
        assertEquals("Stops 31.4 cm short: proximal shaft 1.07 mm in a 1.02 mm lumen",
                WORDS.say(SampleReasons.of(ReasonCode.STOPS_SHORT), beside, SampleReasons.PAIR));
    }

    @Test
    void callsWhatLiesBesideByItsName() {
        PairNames names = new PairNames("g6", "Halden guide", "b2", "Lutra balloon", Map.of("m26", "Mustela 2.6"));
        assertEquals("Beside it lies Mustela 2.6, shaft, 0.87 mm; together they need 1.74 mm",
                WORDS.say(SampleReasons.of(ReasonCode.LIES_BESIDE), names));
    }

    @Test
    void callsALumenALumenWhereItsFigureIsMissing() {
        Reason reason = Reason.of(ReasonCode.MISSING_FIGURE, name("g6"), name("inner diameter"), name("working"));
        assertEquals("Halden guide: no inner diameter is stated for the working lumen", said(reason));
    }

    @Test
    void saysOnWhichSideOfTheOuterTipADeviceIsCaught() {
        Reason inside = Reason.of(ReasonCode.CAUGHT_ON_WITHDRAWAL, distance(mm(-42)), name("balloon"),
                Reason.diameter(mm(1.2)), name(""), Reason.diameter(mm(1.1)));
        assertTrue(said(inside).startsWith("Caught on the way out, its tip 4.2 cm inside the outer tip"), said(inside));
    }

    /** What is less is never shown as equal, and what is enough never as less. */
    @ParameterizedTest
    @CsvSource({ "LESS_THAN_REQUIRED, 0.0499, 0.05, 0.04 mm, 0.05 mm",
        "ENOUGH_CLEARANCE, 0.0508, 0.0508, 0.0508 mm, 0.0508 mm",
        "ENOUGH_CLEARANCE, 0.0256, 0.0254, 0.0256 mm, 0.0254 mm",
        "LESS_THAN_REQUIRED, 0.02, 0.025, 0.02 mm, 0.025 mm" })
    void showsWhichOfTwoClearancesIsLarger(ReasonCode code, double worst, double asked, String left, String needed) {
        String words = said(Reason.of(code, clearance(mm(worst)), clearance(mm(asked)), name("tip"), name("x")));
        assertTrue(words.contains(" " + left + " is left") && words.contains(needed + " is asked"), words);
    }

    @Test
    void addsTheSecondUnitInBrackets() {
        ReasonWords both = ReasonWords.english(UnitPreferences.in(LengthUnit.INCH).with(LengthUnit.MILLIMETRE));
        assertEquals("Stops 31.4 cm short: proximal shaft 0.0422 in (1.07 mm) in a 0.0401 in (1.02 mm) lumen",
                both.say(SampleReasons.of(ReasonCode.STOPS_SHORT), SampleReasons.PAIR));
    }

    @Test
    void keepsBracketsAndBracesInNamesAsTheyAre() {
        Reason reason = Reason.of(ReasonCode.LENGTH_NOT_STATED, name("odd [{0:name}] name"));
        assertTrue(said(reason).startsWith("odd [{0:name}] name: "), said(reason));
    }

    @Test
    void refusesAReasonWithoutItsArgumentsAndNamesThem() {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class,
                () -> said(Reason.of(ReasonCode.TOO_SHORT, name("b2"))));
        assertTrue(e.getMessage().contains("TOO_SHORT"), e.getMessage());
    }

    @Test
    void speaksEnglishWhereThereIsNoTranslation() {
        ReasonWords french = new ReasonWords(Phrases.in(Locale.FRENCH), UnitPreferences.in(LengthUnit.MILLIMETRE));
        assertEquals(said(SampleReasons.of(ReasonCode.COLLAR_STEP)),
                french.say(SampleReasons.of(ReasonCode.COLLAR_STEP), SampleReasons.PAIR));
    }
}
