/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Parts;
import org.ferrule.fit.device.Parts.MarkerPart;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.junit.jupiter.api.Test;

/** Where an imaging plane or the first marker of a balloon or stent comes to lie: told, never a verdict. */
class LandingCheckTest {
    private static final Optional<Parts.StentPart> STENT = Optional.of(new Parts.StentPart("", Optional.empty(),
            Optional.empty(), Optional.empty()));
    private static final Optional<Parts.BalloonPart> BALLOON = Optional.of(new Parts.BalloonPart("", Optional.empty(),
            Optional.empty(), Optional.empty(), Optional.empty(), List.of()));

    private static SampleDevice with(Optional<Parts.BalloonPart> balloon, Optional<Parts.StentPart> stent,
            String... markers) {
        return rod("d", DeviceKind.OTHER, "135 cm", "0.9 mm").parts(new Parts(balloon, stent, Optional.empty(),
                Optional.empty(), Stream.of(markers).map(at -> new MarkerPart(length(at), Optional.empty())).toList(),
                Optional.empty()));
    }

    private static Finding find(SampleQuestion question) {
        return new LandingCheck().check(question.question(), Phase.IN);
    }

    private static Finding find(SampleDevice device, String reach) {
        return find(passage(device, guide("g", "2 mm")).reach(reach));
    }

    @Test
    void theDistalMarkerOfABalloonOrStentIsTold() {
        List<Reason> first = List.of(Reason.of(ReasonCode.LANDING_OF_MARKER, Reason.name("d"),
                Reason.distance(length("4 mm")), Reason.distance(length("96 mm"))));
        assertEquals(first, find(with(BALLOON, Optional.empty(), "22 mm", "4 mm"), "10 cm").reasons());
        assertEquals(first, find(with(Optional.empty(), STENT, "4 mm", "22 mm"), "10 cm").reasons());
        assertEquals(1, find(with(BALLOON, STENT, "4 mm", "22 mm"), "10 cm").evidence().size());
    }

    @Test
    void whatStaysInsideTheGuideIsShownWithoutAWord() {
        Finding inside = find(with(BALLOON, Optional.empty(), "4 mm"), "3 mm");
        assertEquals(List.of(), inside.reasons());
        assertEquals(1, inside.evidence().size());
        assertEquals(1, find(with(BALLOON, Optional.empty(), "4 mm"), "4 mm").reasons().size());
    }

    @Test
    void markersOfOtherDevicesAndWithoutAReachSayNothing() {
        assertEquals(Finding.SILENT, find(with(Optional.empty(), Optional.empty(), "4 mm"), "10 cm"));
        assertEquals(Finding.SILENT, find(with(BALLOON, Optional.empty()), "10 cm"));
        assertEquals(Finding.SILENT, find(passage(with(BALLOON, Optional.empty(), "4 mm"), guide("g", "2 mm"))));
        assertEquals(false, new LandingCheck().inMatrix());
    }
}
