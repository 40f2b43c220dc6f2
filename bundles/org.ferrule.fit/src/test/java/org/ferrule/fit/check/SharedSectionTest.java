/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.device.DeviceKind.OTHER;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.evidence.SharedSection;
import org.ferrule.fit.evidence.SharedSection.Member;
import org.ferrule.fit.evidence.SharedSection.Part;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.junit.jupiter.api.Test;

/** What the check of the passage shows of what lies side by side where it is tightest. */
class SharedSectionTest {
    /** Places are doubles in millimetres. */
    private static final double ROUNDING = 2e-6;

    @Test
    void bareShaftAloneNeedsNoPicture() {
        assertTrue(passage(micro(), guide("g", "1 mm")).in().evidence().isEmpty());
    }

    @Test
    void ownWireIsShownBesideItsShaft() {
        SharedSection section = section(passage(balloon("b", "0.5 mm", "0.8 mm").takesWire("0.3 mm"),
                guide("g", "2 mm")).in());
        assertEquals(List.of(Part.SHAFT, Part.WIRE), section.members().stream().map(Member::part).toList());
        assertEquals(List.of("hypotube", ""), section.members().stream().map(Member::section).toList());
        assertTrue(section.members().stream().allMatch(Member::moving));
        assertEquals(length("1.1 mm"), section.needed());
        assertPlaced(section);
    }

    @Test
    void othersAreShownWhereTheyLie() {
        SampleDevice still = balloon("still", "0.5 mm", "0.8 mm").takesWire("0.3 mm");
        SharedSection section = section(passage(micro(), guide("g", "3 mm")).beside(still, "10 cm")
                .beside(rod("w", GUIDEWIRE, "190 cm", "0.36 mm"), "10 cm").in());
        assertEquals(List.of("m", "still", "still", "w"), section.members().stream().map(Member::device).toList());
        assertEquals(List.of(Part.SHAFT, Part.SHAFT, Part.WIRE, Part.WIRE),
                section.members().stream().map(Member::part).toList());
        assertEquals(List.of(0, 1, 2, 3), section.members().stream().map(Member::body).toList());
        assertPlaced(section);
    }

    @Test
    void pushRodIsShownAsOne() {
        SampleDevice extension = device("x", GUIDE_EXTENSION).length("150 cm")
                .section("tube", "0 cm", "25 cm", "1.7 mm")
                .section("rod", "25 cm", "150 cm", "0.4 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "1.5 mm");
        SharedSection section = section(passage(micro(), guide("g", "0.060 in")).through(extension, "10 cm").in());
        assertEquals(List.of(Part.SHAFT, Part.PUSH_ROD), section.members().stream().map(Member::part).toList());
        assertPlaced(section);
    }

    @Test
    void ovalIsShownByItsTwoEnds() {
        SampleDevice oval = device("o", OTHER).length("135 cm").oval("shaft", "0 cm", "135 cm", "1.1 mm", "0.5 mm");
        SharedSection section = section(passage(micro(), guide("g", "2 mm")).beside(oval, "10 cm").in());
        assertEquals(List.of(0, 1, 1), section.members().stream().map(Member::body).toList());
        assertEquals(List.of(false, true, true), section.members().stream().map(Member::filled).toList());
        assertEquals(length("0.5 mm"), section.members().get(1).figure().centre());
        assertPlaced(section);
    }

    @Test
    void reasonsTellWhatLiesBesideAndWhatIsNeededTogether() {
        PhaseAnswer answer = passage(micro(), guide("g", "1.5 mm")).beside(rod("a", OTHER, "135 cm", "0.7 mm"), "5 cm")
                .in();
        assertTrue(answer.reasons().contains(Reason.of(ReasonCode.LIES_BESIDE, Reason.name("a"), Reason.name("shaft"),
                Reason.diameter(length("0.7 mm")), Reason.diameter(length("1.6 mm")))), answer.reasons().toString());
    }

    private static SampleDevice micro() {
        return rod("m", MICROCATHETER, "135 cm", "0.9 mm");
    }

    private static SharedSection section(PhaseAnswer answer) {
        return (SharedSection) answer.evidence().get(0);
    }

    /** The certificate: every disc in the circle, no two bodies over each other. */
    private static void assertPlaced(SharedSection section) {
        assertTrue(section.neededAtLeast().compareTo(section.needed()) <= 0);
        for (Member one : section.members()) {
            assertTrue(one.disc().reachMm() <= section.needed().mm() / 2 + ROUNDING, one.toString());
            for (Member other : section.members()) {
                assertTrue(one.body() == other.body() || one.disc().gapMm(other.disc()) >= -ROUNDING,
                        one + " over " + other);
            }
        }
    }
}
