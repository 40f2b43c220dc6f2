/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.device.DeviceKind.HAEMOSTASIS_VALVE;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleStack;
import org.ferrule.fit.sample.TestRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What lies where in a stack: beside tubes, in valves, in the vessel. */
class StackLayoutTest {
    private static final SampleDevice MICRO = rod("micro", MICROCATHETER, "150 cm", "0.8 mm").overTheWire("150 cm",
            "0.4 mm");

    private static SampleDevice guide(String outer) {
        return rod("guide", GUIDE_CATHETER, "100 cm", outer).working("100 cm", "2.3 mm");
    }

    private static SampleDevice extension() {
        return device("x", GUIDE_EXTENSION).length("150 cm").section("tube", "0 cm", "25 cm", "1.7 mm")
                .section("push rod", "25 cm", "150 cm", "0.4 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "1.4 mm");
    }

    private static SampleStack stack() {
        return SampleStack.under(TestRules.exact());
    }

    /** What lies in the guide while the innermost device goes through the extension. */
    private static List<Occupant> besideTube(SampleDevice device, String ahead) {
        StackAnswer answer = stack().level(guide("2.7 mm"), "0 cm").beside(device, ahead).level(extension(), "5 cm")
                .level(MICRO, "8 cm").answer();
        return answer.levels().get(2).crossings().get(0).question().conditions().inside();
    }

    @Test
    void whatEndsBesideTheTubeDoesNotLieProximalToIt() {
        assertEquals(List.of(), besideTube(rod("short", GUIDEWIRE, "25 cm", "0.3 mm"), "5 cm"));
        List<Occupant> longer = besideTube(rod("longer", GUIDEWIRE, "26 cm", "0.3 mm"), "5 cm");
        assertEquals(Optional.of(length("1 cm")), longer.get(0).device().device().statedLength());
        assertEquals(length("-20 cm"), longer.get(0).tipAhead());
    }

    @Test
    void whatLiesFartherInThanTheCollarIsWhole() {
        List<Occupant> inside = besideTube(rod("back", GUIDEWIRE, "50 cm", "0.3 mm"), "-30 cm");
        assertEquals(Optional.of(length("50 cm")), inside.get(0).device().device().statedLength());
        assertEquals(length("-30 cm"), inside.get(0).tipAhead());
    }

    @Test
    void aTaperThatTheCollarCutsCountsAtItsThicker() {
        SampleDevice tapered = device("tapered", GUIDEWIRE).length("60 cm").taper("tip", "0 cm", "30 cm", "0.2 mm",
                "0.3 mm").section("shaft", "30 cm", "60 cm", "0.35 mm");
        List<Stretch> outline = besideTube(tapered, "5 cm").get(0).device().outline(Phase.IN);
        assertEquals(List.of("tip", "tip", "shaft"), outline.stream().map(Stretch::name).toList());
        assertEquals(List.of(length("0.2 mm"), length("0.3 mm"), length("0.35 mm")),
                outline.stream().map(s -> s.diameter().orElseThrow().largest().centre()).toList());
        assertEquals(List.of(length("5 cm"), length("5 cm"), length("35 cm")), outline.stream().map(Stretch::to)
                .toList());
    }

    @Test
    void tipsNameDevicesSideBySideAndNoValve() {
        StackAnswer answer = stack().level(guide("2.7 mm"), "0 cm")
                .level(device("valve", HAEMOSTASIS_VALVE).length("8 cm").working("8 cm", "2.3 mm"), "0 cm")
                .beside(rod("buddy", GUIDEWIRE, "190 cm", "0.36 mm"), "2 cm").level(MICRO, "3 cm").answer();
        assertEquals(List.of(new Tip("guide", length("100 cm"), Optional.of(length("0 cm"))),
                new Tip("buddy", length("102 cm"), Optional.of(length("88 cm"))),
                new Tip("micro", length("103 cm"), Optional.of(length("47 cm")))), answer.tips());
        StackAnswer unstated = stack().level(guide("2.7 mm").length("?"), "0 cm").level(MICRO, "3 cm").answer();
        assertEquals(List.of(), unstated.tips());
    }

    @Test
    void aVesselIsHeldAgainstTheThickestPlaceAtBothItsEnds() {
        SampleDevice stepped = device("guide", GUIDE_CATHETER).length("100 cm").working("100 cm", "1.5 mm")
                .section("shaft", "0 cm", "50 cm", "2.0 mm").section("hub", "50 cm", "100 cm", "2.4 mm ±0.1");
        AccessRatio ratio = stack().level(stepped, "0 cm").in("radial artery", "2.5..3.0 mm").answer().access()
                .orElseThrow();
        assertEquals(2.3 / 3.0, ratio.low(), 1e-9);
        assertEquals(1, ratio.high(), 1e-9);
        assertEquals(false, ratio.mayBeLarger(), "as large as the vessel is not larger");
        assertEquals(true, stack().level(stepped, "0 cm").in("radial artery", "2.4..3.0 mm").answer().access()
                .orElseThrow().mayBeLarger());
        assertEquals(Optional.empty(), stack().level(guide("?"), "0 cm").in("radial artery", "2.5 mm").answer()
                .access());
        assertEquals(Optional.empty(), stack().level(guide("2 mm"), "0 cm").answer().access());
    }

    @Test
    void ofEqualsTheOutermostIsTheWeakest() {
        SampleDevice same = rod("same", MICROCATHETER, "140 cm", "2.0 mm").overTheWire("140 cm", "1.1 mm");
        StackAnswer answer = stack().level(guide("2.7 mm"), "0 cm").level(same, "5 cm").level(MICRO, "5 cm").answer();
        assertEquals("same", answer.weakest(Phase.IN).orElseThrow().level().device().device().device().id());
        assertEquals(Optional.empty(), stack().level(guide("2.7 mm"), "0 cm").answer().weakest(Phase.IN));
    }

    @Test
    void whatCannotBeTheOutermostOrLieBesideItIsRefused() {
        SampleDevice valve = device("valve", HAEMOSTASIS_VALVE).length("8 cm").working("8 cm", "2.3 mm");
        assertRefused("valve", () -> stack().level(valve, "0 cm").stack());
        assertRefused("x", () -> stack().level(extension(), "0 cm").stack());
        assertRefused("guide", () -> stack().beside(MICRO, "0 cm").level(guide("2 mm"), "0 cm").stack());
        assertRefused("valve", () -> stack().level(guide("2 mm"), "0 cm").beside(MICRO, "0 cm").level(valve, "0 cm"));
        assertRefused("nothing", () -> stack().stack());
    }

    private static void assertRefused(String named, Executable stack) {
        String message = assertThrows(IllegalArgumentException.class, stack).getMessage();
        assertTrue(message.contains(named), message);
    }

    /** Its port lies 5 cm proximal to the collar. */
    @Test
    void theWireBesideAShaftStillLiesThereProximalToTheCollar() {
        List<Stretch> outline = besideTube(balloon("b", "0.85 mm", "0.6 mm").takesWire("0.36 mm"), "0 cm").get(0)
                .device().outline(Phase.IN);
        assertEquals(List.of(length("0.8 mm"), length("0.96 mm")),
                outline.stream().map(s -> s.diameter().orElseThrow().largest().centre()).toList());
        assertEquals(length("5 cm"), outline.get(0).to());
    }

    @Test
    void whatWentInBeforeLiesInTheValveToo() {
        StackAnswer answer = stack().level(guide("2.7 mm"), "0 cm")
                .level(device("valve", HAEMOSTASIS_VALVE).length("8 cm").working("8 cm", "1 mm"), "0 cm")
                .beside(rod("buddy", GUIDEWIRE, "190 cm", "0.36 mm"), "2 cm").level(MICRO, "3 cm").answer();
        List<Crossing> crossings = answer.levels().get(2).crossings();
        assertEquals(List.of(0, 0, 1, 1), crossings.stream().map(c -> c.question().conditions().inside().size())
                .toList());
        assertEquals(List.of("FITS", "FITS", "BLOCKED", "FITS"), crossings.stream()
                .map(c -> c.answer().in().verdict().name()).toList(), "0.36 and 0.8 mm in a valve of 1 mm");
    }
}
