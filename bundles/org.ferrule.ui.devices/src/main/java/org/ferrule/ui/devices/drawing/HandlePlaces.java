/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.Comparator;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.ferrule.chart.drawing.DeviceLayout;
import org.ferrule.quantity.Length;
import org.ferrule.ui.picture.PictureCanvas;

/** Where handles lie on the canvas, and what a place of the canvas means for them. */
final class HandlePlaces {

    private static final int NEAR_PIXELS = 7;

    private final PictureCanvas canvas;
    private final HandleState state;

    HandlePlaces(PictureCanvas canvas, HandleState state) {
        this.canvas = canvas;
        this.state = state;
    }

    /** Where the handle of a figure is shown: stations of shafts in the middle, shafts above, lumens below. */
    Point of(Handle handle, Length figure) {
        DeviceLayout layout = state.layout();
        Spot spot = handle.spot();
        double x = spot.isStation() ? layout.x(spot.converted(figure.mm()))
                : layout.x(spot.fromMm()) + spot.share() * (layout.x(spot.toMm()) - layout.x(spot.fromMm()));
        double away = layout.heightMm(spot.isStation() ? spot.acrossMm() : spot.isOffset() ? 0 : figure.mm()) / 2;
        return pixel(x, middle(handle, figure) + (spot.lumen().isEmpty() ? -away : away));
    }

    Point of(Handle handle) {
        return of(handle, handle.value());
    }

    /** Where the outline of what a handle moves begins or ends, above or below the middle. */
    Point corner(Handle handle, Length figure, boolean begins, int side) {
        Spot spot = handle.spot();
        double x = state.layout().x(begins ? spot.fromMm() : spot.toMm());
        double diameter = spot.disc().filter(DiscSpot::moves).map(DiscSpot::diameterMm).orElse(figure.mm());
        return pixel(x, middle(handle, figure) + side * state.layout().heightMm(diameter) / 2);
    }

    /** The middle of what a handle belongs to, which its figure may move. */
    private double middle(Handle handle, Length figure) {
        double away = handle.spot().isOffset() ? figure.minus(handle.value()).mm() : 0;
        return middle(handle.spot()) - state.layout().heightMm(away);
    }

    private double middle(Spot spot) {
        DeviceLayout layout = state.layout();
        double station = spot.fromMm() + spot.share() * (spot.toMm() - spot.fromMm());
        double beside = spot.disc().map(disc -> layout.discMm(disc.section(), disc.index()).orElse(0)).orElse(0.0);
        return spot.lumen().isEmpty() ? layout.centreY() - layout.heightMm(beside)
                : layout.lumenY(spot.lumen(), station).orElse(layout.centreY());
    }

    private Point pixel(double x, double y) {
        return canvas.toCanvas(new org.ferrule.picture.Point(x, y));
    }

    /** The figure that a handle would have if it were at a place. */
    Length figureAt(Handle handle, int x, int y) {
        org.ferrule.picture.Point place = canvas.toPicture(x, y);
        DeviceLayout layout = state.layout();
        Spot spot = handle.spot();
        if (spot.isStation()) {
            return Length.ofMm(spot.converted(layout.stationMm(place.xMm())));
        }
        double above = layout.diameterMm(middle(spot) - place.yMm());
        return Length.ofMm(spot.isOffset() ? handle.value().mm() + above : 2 * Math.abs(above));
    }

    /** The nearest handle, if one is near. */
    Optional<Handle> at(int x, int y) {
        return state.handles().stream().filter(handle -> distance(handle, x, y) <= NEAR_PIXELS)
                .min(Comparator.comparingDouble(handle -> distance(handle, x, y)));
    }

    private double distance(Handle handle, int x, int y) {
        Point place = of(handle);
        return Math.hypot(place.x - x, place.y - y);
    }
}
