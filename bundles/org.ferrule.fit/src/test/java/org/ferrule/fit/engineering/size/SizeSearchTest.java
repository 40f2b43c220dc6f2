/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import static org.ferrule.fit.sample.SampleBench.didNotPass;
import static org.ferrule.fit.sample.SampleClaim.compatible;
import static org.ferrule.fit.sample.SampleClaim.largestDevice;
import static org.ferrule.fit.sample.SampleClaim.minimumLumen;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

class SizeSearchTest {
    private static final TestRules SPANS = TestRules.usual();

    private static SampleDevice rodOf(String diameter) {
        return rod("rod", DeviceKind.MICROCATHETER, "135 cm", diameter);
    }

    private static RequiredSize shaft(int section, SampleQuestion... questions) {
        return shaft(List.of(), section, questions);
    }

    private static RequiredSize shaft(List<BenchResult> bench, int section, SampleQuestion... questions) {
        List<FitQuestion> asked = List.of(questions).stream().map(SampleQuestion::question).toList();
        Device device = asked.get(0).inner().device();
        return SizeSearch.of(MovableSection.of(new Place.Shaft(device, section)), asked, FitSolver.standard(bench));
    }

    private static Length limit(RequiredSize size, Verdict verdict) {
        return size.limit(verdict, Phase.IN).orElseThrow().distal();
    }

    /** Lumen low 1.768 less required 0.025 less the span of 0.01 mm above the centre. */
    @Test
    void equalsClosedFormForAStatedDiameter() {
        RequiredSize size = shaft(0, passage(rodOf("1 mm"), guide("g", "1.778 mm")).under(SPANS));
        assertEquals(length("1.733 mm"), limit(size, Verdict.FITS));
        assertEquals(length("1.778 mm"), limit(size, Verdict.TIGHT));
    }

    @Test
    void keepsAStatedToleranceRoundTheMovedCentre() {
        RequiredSize size = shaft(0, passage(rodOf("0.60 mm ±0.02"), guide("g", "1.778 mm")).under(SPANS));
        assertEquals(length("1.723 mm"), limit(size, Verdict.FITS));
    }

    /** A "max" is the high end itself, so that its span plays no part; its assumed centre blocks in the best lane. */
    @Test
    void movesTheEndOfAMaximum() {
        RequiredSize size = shaft(0, passage(rodOf("1 mm max"), guide("g", "1.778 mm")).under(SPANS));
        assertEquals(length("1.743 mm"), limit(size, Verdict.FITS));
        assertEquals(length("1.808 mm"), limit(size, Verdict.TIGHT));
    }

    @Test
    void keepsTheWidthOfARangeAndNamesItsLowEnd() {
        RequiredSize size = shaft(0, passage(rodOf("0.88..0.94 mm"), guide("g", "1.778 mm")).under(SPANS));
        assertEquals(length("1.683 mm"), limit(size, Verdict.FITS));
    }

    /** k(n 12, 95 % confidence, 99 % coverage) = 3.747, ISO 16269-6 (computed); k sd = 0.029976 mm. */
    @Test
    void keepsTheIntervalOfASample() {
        RequiredSize size = shaft(0, passage(rodOf("1 mm sd 0.008 n 12"), guide("g", "1.778 mm")).under(SPANS));
        assertEquals(1.768 - 0.025 - 0.008 * 3.747, limit(size, Verdict.FITS).mm(), 1e-5);
    }

    @Test
    void bothEndsOfATaperMoveTogether() {
        SampleDevice tapered = device("rod", DeviceKind.MICROCATHETER).length("135 cm").taper("shaft", "0 cm",
                "135 cm", "0.6 mm", "0.9 mm");
        Size limit = shaft(0, passage(tapered, guide("g", "1.778 mm"))).limit(Verdict.FITS, Phase.IN).orElseThrow();
        assertEquals(new Size(length("1.453 mm"), length("1.753 mm")), limit);
    }

    /** A worked example of the tolerance stack (Shigley-type problem): w = 0.020 ± 0.018 in; for 0.010 d is 6.528. */
    @Test
    void designsTheDiameterOfThePublishedStack() {
        SampleDevice outer = device("outer", DeviceKind.OTHER).length("10 in")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 in", "10 in")
                .bore("0 in", "10 in", "6 in ±0.010");
        SampleDevice stack = device("inner", DeviceKind.OTHER).length("1 in").section("stack", "0 in", "1 in",
                "1 in ±0.008");
        FitQuestion question = passage(stack, outer).under(TestRules.exact().required("0.010 in")).question();
        RequiredSize width = SizeSearch.of(
                MovableSection.of(new Place.Bore(question.outer().device(), question.lumen(), 0)),
                List.of(question), FitSolver.standard(List.of()));
        assertEquals(length("1.028 in"), width.limit(Verdict.FITS, Phase.IN).orElseThrow().distal(),
                "a stack of 6.500 ± 0.008 in needs 6.528 in: 0.028 in more than itself");
    }

    @Test
    void tellsHowWideALumenMustBe() {
        FitQuestion question = passage(rodOf("1.7 mm"), guide("g", "1 mm")).under(SPANS).question();
        RequiredSize size = SizeSearch.of(
                MovableSection.of(new Place.Bore(question.outer().device(), question.lumen(), 0)),
                List.of(question), FitSolver.standard(List.of()));
        assertEquals(length("1.745 mm"), limit(size, Verdict.FITS));
        assertEquals(length("1.7 mm"), limit(size, Verdict.TIGHT));
        assertEquals(List.of(Verdict.BLOCKED, Verdict.TIGHT),
                size.flips(Phase.IN).stream().map(f -> f.flip().below()).toList());
    }

    /** Common practice: the 6 Fr guides of 0.070 and 0.071 in; the narrowest one decides. */
    @Test
    void theNarrowestPartnerDecides() {
        SampleDevice rod = rodOf("1 mm");
        RequiredSize size = shaft(0, passage(rod, guide("wide", "0.071 in")),
                passage(rod, guide("narrow", "0.070 in")));
        assertEquals(length("1.753 mm"), limit(size, Verdict.FITS));
        assertEquals(List.of("narrow", "narrow", "wide", "wide"), size.flips(Phase.IN).stream()
                .map(f -> f.partner().question().outer().device().id()).toList());
    }

    @Test
    void aMissingFigureCountsAsStatedWithoutTolerance() {
        RequiredSize size = shaft(0, passage(rodOf("?"), guide("g", "1.778 mm")).under(SPANS));
        assertEquals(length("1.733 mm"), limit(size, Verdict.FITS));
    }

    /** With the 0.014 in wire beside the hypotube, which the moved hypotube keeps. */
    @Test
    void countsTheWireBesideTheShaft() {
        RequiredSize size = shaft(3, passage(balloon("b", "0.8 mm", "0.6 mm"), guide("g", "1.778 mm")));
        assertEquals(length("1.3974 mm"), limit(size, Verdict.FITS));
    }

    @Test
    void comingOutCountsTheGrownProfile() {
        RequiredSize size = shaft(1, passage(balloon("b", "0.8 mm", "0.6 mm"), guide("g", "1.778 mm"))
                .under(TestRules.exact().growth("1", "1.25", "1.25")));
        assertEquals(length("1.753 mm"), size.limit(Verdict.FITS, Phase.IN).orElseThrow().distal());
        assertEquals(length("1.4024 mm"), size.limit(Verdict.FITS, Phase.OUT).orElseThrow().distal());
    }

    @Test
    void aClaimFlipsWhereItsLabelIsPassed() {
        SampleDevice guide = guide("g", "1.778 mm").claim(largestDevice("1.5 mm").kinds(DeviceKind.MICROCATHETER));
        RequiredSize size = shaft(0, passage(rodOf("1 mm"), guide).under(SPANS));
        assertEquals(length("1.5 mm"), limit(size, Verdict.FITS));
        assertEquals(Verdict.BLOCKED, size.flips(Phase.IN).get(0).flip().above());
    }

    @Test
    void saysThatAClaimDecidesWhateverTheSize() {
        SampleDevice rod = rodOf("1 mm").claim(minimumLumen("2 mm").kinds(DeviceKind.GUIDE_CATHETER));
        RequiredSize size = shaft(0, passage(rod, guide("g", "1.778 mm")));
        assertEquals(Optional.empty(), size.limit(Verdict.TIGHT, Phase.IN));
        assertEquals(List.of(), size.flips(Phase.IN));
        assertEquals(Optional.of(Holds.CLAIM), size.partners().get(0).heldBy());
    }

    @Test
    void saysThatABenchResultDecides() {
        RequiredSize size = shaft(List.of(didNotPass("rod", "g").result()), 0,
                passage(rodOf("1 mm"), guide("g", "1.778 mm")));
        assertEquals(Optional.of(Holds.BENCH), size.partners().get(0).heldBy());
    }

    @Test
    void saysThatAnotherSectionIsTooThick() {
        RequiredSize size = shaft(0, passage(balloon("b", "2 mm", "0.6 mm"), guide("g", "1.778 mm")));
        assertEquals(Optional.of(Holds.ANOTHER_SECTION), size.partners().get(0).heldBy());
        assertEquals("balloon", size.partners().get(0).easiest().limiting().orElseThrow().deviceSection());
    }

    @Test
    void saysThatAnotherFigureIsMissing() {
        RequiredSize size = shaft(0, passage(balloon("b", "?", "0.6 mm"), guide("g", "1.778 mm")));
        assertEquals(Optional.of(Holds.MISSING_FIGURE), size.partners().get(0).heldBy());
        assertEquals(Optional.empty(), size.limit(Verdict.FITS, Phase.IN));
    }

    @Test
    void saysThatTheDeviceIsTooShort() {
        RequiredSize size = shaft(0, passage(rodOf("1 mm"), guide("g", "1.778 mm")).reach("90 cm"));
        assertEquals(Optional.of(Holds.ANOTHER_CHECK), size.partners().get(0).heldBy());
    }

    @Test
    void saysThatTheSectionNeverEnters() {
        RequiredSize size = shaft(3, passage(balloon("b", "0.8 mm", "0.6 mm"), guide("g", "1.778 mm")).reach("-90 cm"));
        assertEquals(Optional.of(Holds.NEVER_MET), size.partners().get(0).heldBy());
        assertEquals(size.most().distal(), limit(size, Verdict.FITS));
    }

    @Test
    void aYesThatGeometryContradictsIsTight() {
        SampleDevice rod = rodOf("1 mm").claim(compatible().kinds(DeviceKind.GUIDE_CATHETER));
        RequiredSize size = shaft(0, passage(rod, guide("g", "1.778 mm")));
        assertEquals(List.of(Verdict.TIGHT), size.flips(Phase.IN).stream().map(f -> f.flip().above()).toList());
    }

    @Test
    void refusesASectionThatIsNotRound() {
        Device oval = device("o", DeviceKind.DUAL_LUMEN_MICROCATHETER).oval("shaft", "0 cm", "9 cm", "1.1 mm", "0.9 mm")
                .device();
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> MovableSection.of(new Place.Shaft(oval, 0)));
        assertTrue(refused.getMessage().contains("\"shaft\"") && refused.getMessage().contains("\"o\""));
    }

    @Test
    void refusesAQuestionAboutOtherDevices() {
        FitQuestion question = passage(rodOf("1 mm"), guide("g", "1.778 mm")).question();
        Device other = rod("other", DeviceKind.MICROCATHETER, "135 cm", "1 mm").device();
        assertThrows(IllegalArgumentException.class, () -> SizeSearch.of(MovableSection.of(new Place.Shaft(other, 0)),
                List.of(question), FitSolver.standard(List.of())));
    }
}
