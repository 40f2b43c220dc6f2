/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.junit.jupiter.api.Test;

/** Parts that are pushed through extensions, past what tapers, and beside a wire: all of them stop, or none. */
class SecondOpinionsThroughTest {
    private static final int PARTS = 10;

    private static SampleDevice extension(String rod) {
        return device("x", DeviceKind.GUIDE_EXTENSION).length("150 cm").section("tube", "0 cm", "25 cm", "1.7 mm")
                .section("push rod", "25 cm", "150 cm", rod)
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "1.5 mm");
    }

    private static SampleDevice micro(String diameter) {
        return rod("m", DeviceKind.MICROCATHETER, "135 cm", diameter);
    }

    private static void assertOverlapping(int expected, SampleQuestion question) {
        SecondOpinion opinion = SecondOpinions.of(question.question(), Phase.IN, 7, PARTS);
        assertEquals(expected, opinion.overlapping(), opinion::toString);
        assertEquals(0, opinion.undecided(), opinion::toString);
        assertTrue(opinion.agrees(), opinion::toString);
    }

    @Test
    void theTubeStopsWhatIsThickerThanItsLumen() {
        assertOverlapping(0, passage(micro("1.45 mm"), guide("g", "2 mm")).through(extension("0.4 mm"), "5 cm"));
        assertOverlapping(PARTS, passage(micro("1.55 mm"), guide("g", "2.2 mm")).through(extension("0.4 mm"), "5 cm"));
    }

    @Test
    void proximalToTheCollarThePushRodTakesRoom() {
        assertOverlapping(PARTS, passage(micro("1.4 mm"), guide("g", "1.75 mm")).through(extension("0.4 mm"), "5 cm"));
        assertOverlapping(0, passage(micro("1.4 mm"), guide("g", "1.75 mm")).through(extension("0.3 mm"), "5 cm"));
    }

    @Test
    void distalToAnExtensionThatEndsInsideTheGuideStaysAsItIs() {
        assertOverlapping(PARTS,
                passage(micro("1.4 mm"), narrowAtItsTip("1.3 mm")).through(extension("0.4 mm"), "-5 cm"));
        assertOverlapping(0, passage(micro("1.4 mm"), narrowAtItsTip("1.45 mm")).through(extension("0.4 mm"), "-5 cm"));
    }

    private static SampleDevice narrowAtItsTip(String tip) {
        return device("g", DeviceKind.GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "100 cm").bore("0 mm", "96 cm", "2 mm")
                .bore("96 cm", "100 cm", tip);
    }

    /** 0.4 mm and a wire of 0.36 mm beside it. */
    @Test
    void theWireOfAnExtensionRunsBesideItsPushRod() {
        SampleDevice thin = device("x", DeviceKind.GUIDE_EXTENSION).length("150 cm").takesWire("0.36 mm")
                .section("tube", "0 cm", "25 cm", "0.6 mm").section("push rod", "25 cm", "150 cm", "0.4 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "0.5 mm");
        assertOverlapping(PARTS, passage(thin, guide("g", "0.75 mm")));
        assertOverlapping(0, passage(thin, guide("g", "0.77 mm")));
    }

    /** The device thickens as the lumen narrows: 0.4 mm are left all along the way, and nowhere less. */
    @Test
    void whatTapersBesideAnotherLeavesWhatItLeavesInLine() {
        SampleDevice narrowing = device("g", DeviceKind.GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "100 cm")
                .taperedBore("0 cm", "100 cm", "2 mm", "1.6 mm");
        SampleDevice thickening = device("d", DeviceKind.OTHER).length("100 cm").taper("shaft", "0 cm", "100 cm",
                "0.8 mm", "1.2 mm");
        SecondOpinion opinion = SecondOpinions.of(passage(thickening, narrowing).reach("0 cm")
                .beside(rod("a", DeviceKind.OTHER, "135 cm", "0.4 mm"), "0 cm").question(), Phase.IN, 7, PARTS);
        assertEquals(0.4, opinion.leastMm(), 1e-5);
        assertTrue(opinion.agrees(), opinion::toString);
    }
}
