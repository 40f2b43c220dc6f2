/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.ferrule.quantity.Length;

/**
 * What lies side by side where a stretch of a device meets a place of the way: the parts of the device first, then
 * those of its neighbours. A device whose figures are unknown counts as nothing.
 *
 * @param place where all neighbours are known
 * @param device the stretch
 */
record Across(Place place, Stretch device) {

    private Stream<Shape> shapes() {
        return Stream.concat(device.shape().stream(),
                place.beside().stream().flatMap(n -> n.outline().shape().stream()));
    }

    /** Whether it is the same at every pair of stations. */
    boolean isConstant() {
        return isConstantAlongTheWay() && device.shape().filter(Shape::tapers).isEmpty();
    }

    private boolean isConstantAlongTheWay() {
        return place.bore().diameter().orElseThrow().isConstant()
                && place.beside().stream().flatMap(n -> n.outline().shape().stream()).noneMatch(Shape::tapers);
    }

    /** Whether what is needed runs linearly in both stations: the sum of no more than two round parts. */
    boolean isLinear() {
        return shapes().mapToInt(s -> s.wire().isPresent() ? 2 : 1).sum() <= 2
                && shapes().allMatch(s -> s.distal().isRound());
    }

    /** Whether it pays to take the place in strips. */
    boolean mayBeCut() {
        return !isConstantAlongTheWay() && !isLinear();
    }

    /** Whether all parts are as thick as they say, and not only no thicker. */
    boolean isProved() {
        return place.bore().proved() && shapes().allMatch(Shape::proved);
    }

    /** What all parts need at most: each stretch by itself, in one line. */
    Length lengthInLine() {
        return Stream.concat(Stream.of(device), place.beside().stream().map(Neighbour::outline))
                .flatMap(s -> s.diameter().stream()).map(Taper::widest).reduce(Length.ZERO, Length::plus);
    }

    /** The parts at a station of the way and a station of the device. */
    List<Profile> at(Length x, Length s) {
        List<Profile> parts = new ArrayList<>();
        device.shape().ifPresent(shape -> parts.addAll(shape.at(s)));
        place.beside().forEach(n -> parts.addAll(n.outline().shape().orElseThrow().at(n.stationAt(x))));
        return parts;
    }

    /** Those parts at a pair of stations that are as thick as they say, and not only no thicker. */
    List<Profile> provedAt(Length x, Length s) {
        List<Profile> parts = new ArrayList<>();
        device.shape().filter(Shape::proved).ifPresent(shape -> parts.addAll(shape.at(s)));
        place.beside().forEach(n -> n.outline().shape().filter(Shape::proved)
                .ifPresent(shape -> parts.addAll(shape.at(n.stationAt(x)))));
        return parts;
    }

    /** The parts in a window, each as wide as anywhere there. */
    List<Profile> widest(Window window) {
        return over(window, Shape::widest);
    }

    /** The parts in a window, each as narrow as anywhere there. */
    List<Profile> narrowest(Window window) {
        return over(window, Shape::narrowest);
    }

    private interface Extent {
        List<Profile> of(Shape shape, Length from, Length to);
    }

    private List<Profile> over(Window window, Extent extent) {
        List<Profile> parts = new ArrayList<>();
        device.shape().ifPresent(
                shape -> parts.addAll(extent.of(shape, new Length(window.s0()), new Length(window.lastS()))));
        place.beside().forEach(n -> parts.addAll(extent.of(n.outline().shape().orElseThrow(),
                n.stationAt(new Length(window.x0())), n.stationAt(new Length(window.x1())))));
        return parts;
    }
}
