/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.Chance;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Chances stand beside the verdict, where deviations are stated. */
class ChanceCheckTest {

    @Test
    void chanceOfOneClearanceIsThePublishedOne() {
        // extension of 1.43 mm, device of 1.40 mm, sd 0.010 mm each: 0.016947 (stress-strength form; computed)
        Finding finding = find(passage(rod("d", MICROCATHETER, "135 cm", "1.40 mm sd 0.010"),
                guide("g", "1.43 mm sd 0.010")));
        Chance chance = (Chance) finding.evidence().get(0);
        assertEquals(0.016947, chance.high(), 1e-6);
        assertEquals(chance.low(), chance.high());
        assertEquals(Verdict.FITS, finding.verdict());
    }

    @Test
    void aboveTheLimitIsACaution() {
        SampleQuestion question = passage(rod("d", MICROCATHETER, "135 cm", "1.40 mm sd 0.010"),
                guide("g", "1.43 mm sd 0.010"));
        assertTrue(!codes(find(question, "0.02")).contains(ReasonCode.CHANCE_TOO_HIGH));
        assertTrue(codes(find(question, "0.01")).contains(ReasonCode.CHANCE_TOO_HIGH));
    }

    @Test
    void placesThatShareTheDeviceAreBounded() {
        SampleDevice two = device("g", GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "100 cm")
                .bore("0 mm", "50 cm", "1.43 mm sd 0.010").bore("50 cm", "100 cm", "1.44 mm sd 0.010");
        Chance chance = (Chance) find(passage(rod("d", MICROCATHETER, "135 cm", "1.40 mm sd 0.010"), two)).evidence()
                .get(0);
        assertEquals(0.016947, chance.low(), 1e-6, "the larger of both");
        assertEquals(0.016947 + 0.002339, chance.high(), 1e-5, "their sum: Phi(-3/sqrt 2) and Phi(-4/sqrt 2)");
    }

    @Test
    void limitOnALabelIsNeverTakenForDeviations() {
        assertSilent(passage(rod("d", MICROCATHETER, "135 cm", "1.40 mm max"), guide("g", "1.43 mm sd 0.010")));
        assertSilent(passage(rod("d", MICROCATHETER, "135 cm", "1.40 mm ±0.03"), guide("g", "1.43 mm sd 0.010")));
        assertSilent(passage(rod("d", MICROCATHETER, "135 cm", "1.40 mm sd 0.010"), guide("g", "1.43 mm min")));
    }

    @Test
    void onlyTheLimitingPlaceCounts() {
        SampleDevice waisted = device("d", MICROCATHETER).length("135 cm")
                .section("tip", "0 mm", "5 cm", "1.2 mm sd 0.010")
                .section("shaft", "5 cm", "135 cm", "1.4 mm");
        assertSilent(passage(waisted, guide("g", "1.43 mm sd 0.010")));
    }

    @Test
    void wireBesideAShaftHasNoStatedDeviation() {
        assertSilent(passage(balloon("b", "0.8 mm sd 0.010", "1.1 mm sd 0.010"), guide("g", "1.5 mm sd 0.010")));
    }

    private static void assertSilent(SampleQuestion question) {
        assertEquals(Finding.SILENT, find(question));
    }

    private static Finding find(SampleQuestion question) {
        return new ChanceCheck().check(question.under(TestRules.usual()).question(), Phase.IN);
    }

    private static Finding find(SampleQuestion question, String limit) {
        return new ChanceCheck().check(question.under(TestRules.usual().greatestChance(limit)).question(), Phase.IN);
    }

    private static List<ReasonCode> codes(Finding finding) {
        return finding.reasons().stream().map(Reason::code).toList();
    }

    @Test
    void partsThatDoNotEnterAddNoChance() {
        SampleDevice stepped = device("d", MICROCATHETER).length("135 cm")
                .section("shaft", "0 cm", "100 cm", "1.40 mm sd 0.010")
                .section("tail", "100 cm", "135 cm", "1.39 mm sd 0.010");
        SampleQuestion question = passage(stepped, guide("g", "1.43 mm sd 0.010"));
        assertEquals(0.016947, ((Chance) find(question.reach("-10 cm")).evidence().get(0)).high(), 1e-6);
        assertEquals(0.016947 + 0.002339, ((Chance) find(question.reach("10 cm")).evidence().get(0)).high(), 1e-5);
    }

    @Test
    void whatGrowsHasNoStatedDeviationComingOutAndWhatIsStatedHasOne() {
        SampleDevice grows = device("d", MICROCATHETER).length("135 cm").folded("balloon", "0 cm", "135 cm",
                "1.40 mm sd 0.010");
        SampleDevice stated = device("d", MICROCATHETER).length("135 cm").folded("balloon", "0 cm", "135 cm", "1.3 mm",
                "1.40 mm sd 0.010");
        assertEquals(Finding.SILENT, find(grows, Phase.OUT));
        assertEquals(1, find(grows, Phase.IN).evidence().size());
        assertEquals(1, find(stated, Phase.OUT).evidence().size());
        assertEquals(Finding.SILENT, find(stated, Phase.IN));
    }

    private static Finding find(SampleDevice device, Phase phase) {
        return new ChanceCheck().check(passage(device, guide("g", "1.43 mm sd 0.010")).under(TestRules.usual())
                .question(), phase);
    }
}
