/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.device.DeviceKind.ROTATIONAL_BURR;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.TIGHT;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.BendRoom;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** What lies in a bent lumen beside a rigid part, and how much room it leaves. */
class BendBesideOthersTest {

    @Test
    void whatLiesInTheLumenAlreadyTakesRoom() {
        SampleDevice wire = rod("w", MICROCATHETER, "135 cm", "0.36 mm");
        SampleQuestion question = question(burr("9 mm"), "1.778 mm").bentLumen("20 mm");
        assertEquals(FITS, find(question).verdict());
        Finding finding = find(question.beside(wire, "5 cm"));
        assertEquals(TIGHT, finding.verdict(), "the wire may make room, so it is not proved");
        BendRoom room = (BendRoom) finding.evidence().get(0);
        assertEquals(Optional.of(length("1.418 mm")), room.freeLumen());
    }

    /** 1.778 mm less 0.36 mm going in, less 1.3 times 0.36 mm at worst coming out, as where it passes straight. */
    @Test
    void whatGrowsByUseTakesMoreRoomOnTheWayOut() {
        SampleDevice balloon = device("o", BALLOON_CATHETER).length("135 cm").folded("balloon", "0 cm", "135 cm",
                "0.36 mm");
        SampleQuestion question = question(burr("9 mm"), "1.778 mm").bentLumen("20 mm").beside(balloon, "5 cm")
                .under(TestRules.exact().growth("1.1", "1.2", "1.3"));
        assertEquals(Optional.of(length("1.418 mm")), freeLumen(question, Phase.IN));
        assertEquals(Optional.of(length("1.31 mm")), freeLumen(question, Phase.OUT));
    }

    @Test
    void whatEndsBeforeTheBendTakesNone() {
        SampleDevice shaft = rod("w", MICROCATHETER, "135 cm", "0.36 mm");
        assertEquals(FITS, find(question(burr("9 mm"), "1.778 mm").bentLumen("20 mm").beside(shaft, "-101 cm"))
                .verdict());
    }

    @Test
    void onlyWhatLiesBetweenHubAndOpeningTakesRoom() {
        SampleDevice thickTip = device("o", MICROCATHETER).length("135 cm").section("tip", "0 cm", "5 cm", "1 mm")
                .section("shaft", "5 cm", "135 cm", "0.36 mm");
        SampleDevice thickTail = device("o", MICROCATHETER).length("135 cm")
                .section("shaft", "0 cm", "105 cm", "0.36 mm")
                .section("tail", "105 cm", "135 cm", "1 mm");
        for (SampleDevice device : List.of(thickTip, thickTail)) {
            SampleQuestion question = question(burr("5 mm"), "1.778 mm").bentLumen("20 mm").beside(device, "5 cm");
            assertEquals(Optional.of(length("1.418 mm")), freeLumen(question, Phase.IN));
        }
        SampleQuestion farther = question(burr("5 mm"), "1.778 mm").bentLumen("20 mm").beside(thickTip, "4 cm");
        assertEquals(Optional.of(length("0.778 mm")), freeLumen(farther, Phase.IN));
    }

    /** The tip of the other lies in the extension's tube, which opens 5 cm beyond the guide. */
    @Test
    void throughAnExtensionWhatLiesInItsTubeTakesRoom() {
        SampleDevice extension = device("x", GUIDE_EXTENSION).length("150 cm")
                .section("tube", "0 cm", "25 cm", "1.7 mm").section("rod", "25 cm", "150 cm", "0.4 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "1.5 mm");
        SampleDevice other = device("o", MICROCATHETER).length("135 cm").section("tip", "0 cm", "5 cm", "1 mm")
                .section("shaft", "5 cm", "135 cm", "0.36 mm");
        SampleQuestion question = question(burr("5 mm"), "1.778 mm").bentLumen("20 mm").through(extension, "5 cm");
        assertEquals(Optional.of(length("1.5 mm")), freeLumen(question, Phase.IN));
        assertEquals(Optional.of(length("1.14 mm")), freeLumen(question.beside(other, "10 cm"), Phase.IN));
    }

    private static Optional<Length> freeLumen(SampleQuestion question, Phase phase) {
        return ((BendRoom) new BendCheck().check(question.question(), phase).evidence().get(0)).freeLumen();
    }

    private static SampleDevice burr(String rigidLength) {
        return device("d", ROTATIONAL_BURR).length("135 cm").section("burr", "0 mm", rigidLength, "1.2 mm").rigid()
                .section("shaft", rigidLength, "135 cm", "1 mm");
    }

    private static SampleQuestion question(SampleDevice inner, String lumen) {
        return passage(inner, guide("g", lumen)).reach("10 cm");
    }

    private static Finding find(SampleQuestion question) {
        return new BendCheck().check(question.question(), Phase.IN);
    }
}
