/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import static org.ferrule.fit.sample.SampleDevice.member;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.figure.Figure;
import org.ferrule.geometry.Stadium;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** What lies across an axis: forms, what tapers, and the room for it with a wire. */
class ProfileTest {
    private static final Contour OVAL = new Contour.Oval(Dimension.parse("1.2 mm"), Dimension.parse("0.6 mm"));

    private static Figure exactly(String text) {
        return Figure.exactly(length(text));
    }

    private static Figure assumed(String text) {
        return new Figure(length(text), length(text), length(text), true);
    }

    private static Profile bundle(Contour.Member... members) {
        return new Profile(new Contour.Bundle(List.of(members)),
                List.of(members).stream().map(m -> Figure.exactly(m.diameter().label())).toList());
    }

    private static Profile oval(Figure width, Figure height) {
        return new Profile(OVAL, List.of(width, height));
    }

    @Test
    void onlyTheSameFormWithPartsInTheSamePlacesIsLikeAnother() {
        Profile pair = bundle(member("0 mm", "0 mm", "0.5 mm"), member("0.6 mm", "0 mm", "0.4 mm"));
        assertTrue(pair.isLike(bundle(member("0 mm", "0 mm", "0.4 mm"), member("0.6 mm", "0 mm", "0.3 mm"))));
        assertFalse(pair.isLike(bundle(member("0 mm", "0 mm", "0.5 mm"), member("0.7 mm", "0 mm", "0.4 mm"))));
        assertFalse(pair.isLike(bundle(member("0 mm", "0 mm", "0.5 mm"), member("0.6 mm", "0.1 mm", "0.4 mm"))));
        assertFalse(pair.isLike(Profile.disc(exactly("1 mm"))));
        assertFalse(Profile.disc(exactly("1 mm")).isLike(pair));
        assertFalse(oval(exactly("1 mm"), exactly("0.5 mm")).isLike(Profile.disc(exactly("1 mm"))));
        assertTrue(oval(exactly("1 mm"), exactly("0.5 mm")).isLike(oval(exactly("2 mm"), exactly("0.5 mm"))));
        assertTrue(Profile.disc(exactly("1 mm")).isLike(Profile.disc(exactly("2 mm"))));
    }

    @Test
    void aCentreIsAssumedWhereThatOfAnyMeasureIs() {
        assertFalse(oval(exactly("1 mm"), exactly("0.5 mm")).centreAssumed());
        assertTrue(oval(exactly("1 mm"), assumed("0.5 mm")).centreAssumed());
        assertTrue(Room.of(oval(exactly("1 mm"), assumed("0.5 mm")), Optional.empty()).needed().centreAssumed());
        assertTrue(Room.of(oval(exactly("1 mm"), exactly("0.5 mm")), Optional.of(assumed("0.3 mm"))).needed()
                .centreAssumed());
        assertFalse(Room.of(oval(exactly("1 mm"), exactly("0.5 mm")), Optional.of(exactly("0.3 mm"))).needed()
                .centreAssumed());
        Profile disc = Profile.disc(exactly("1 mm"));
        assertTrue(Room.of(disc, Optional.of(assumed("0.3 mm"))).needed().centreAssumed());
        assertTrue(Room.of(Profile.disc(assumed("1 mm")), Optional.of(exactly("0.3 mm"))).needed().centreAssumed());
        assertFalse(Room.of(disc, Optional.of(exactly("0.3 mm"))).needed().centreAssumed());
    }

    @Test
    void anOvalIsAsWideAsItsLargerMeasureWhicheverIsNamedFirst() {
        Stadium body = (Stadium) oval(exactly("0.6 mm"), exactly("0.7 mm")).body(Figure::centre);
        assertEquals(length("0.7 mm"), body.width());
        assertEquals(length("0.6 mm"), body.height());
    }

    @Test
    void whatTapersRunsFromEndToEndAndIsRoundedUp() {
        Profile thin = Profile.disc(Figure.exactly(new Length(1000)));
        Profile thick = Profile.disc(Figure.exactly(new Length(2000)));
        Shape shape = new Shape(new Length(10), new Length(16), thin, thick, Optional.empty(), true);
        assertTrue(shape.tapers());
        assertEquals(List.of(thin), shape.at(new Length(9)));
        assertEquals(List.of(thin), shape.at(new Length(10)));
        assertEquals(List.of(Profile.disc(Figure.exactly(new Length(1167)))), shape.at(new Length(11)));
        assertEquals(List.of(thick), shape.at(new Length(16)));
        assertEquals(List.of(thick), shape.at(new Length(17)));
        assertEquals(List.of(Profile.disc(Figure.exactly(new Length(1500)))),
                shape.widest(new Length(11), new Length(13)));
        assertEquals(List.of(Profile.disc(Figure.exactly(new Length(1167)))),
                shape.narrowest(new Length(11), new Length(13)));
    }

    @Test
    void aWireBesideTheShaftIsAPartOfItsOwn() {
        Profile disc = Profile.disc(exactly("1 mm"));
        Shape shape = new Shape(Length.ZERO, length("5 mm"), disc, Profile.disc(exactly("1 mm")),
                Optional.of(exactly("0.3 mm")), true);
        assertFalse(shape.tapers());
        assertEquals(List.of(disc, Profile.disc(exactly("0.3 mm"))), shape.at(length("3 mm")));
    }
}
