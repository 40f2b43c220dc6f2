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

    /** Where the handle is shown when its figure is a length: stations of shafts in the middle, shafts above, lumens below. */
    Point of(Handle handle, Length figure) {
        DeviceLayout layout = state.layout();
        Spot spot = handle.spot();
        double x = spot.isStation() ? layout.x(spot.converted(figure.mm()))
                : layout.x(spot.fromMm()) + spot.share() * (layout.x(spot.toMm()) - layout.x(spot.fromMm()));
        double away = layout.heightMm(spot.isStation() ? spot.acrossMm() : figure.mm()) / 2;
        return pixel(x, middle(spot) + (spot.lumen().isEmpty() ? -away : away));
    }

    Point of(Handle handle) {
        return of(handle, handle.value());
    }

    /** Where the outline of what a handle moves begins or ends, above or below the middle. */
    Point corner(Handle handle, Length figure, boolean begins, int side) {
        double x = state.layout().x(begins ? handle.spot().fromMm() : handle.spot().toMm());
        return pixel(x, middle(handle.spot()) + side * state.layout().heightMm(figure.mm()) / 2);
    }

    private double middle(Spot spot) {
        double station = spot.fromMm() + spot.share() * (spot.toMm() - spot.fromMm());
        return spot.lumen().isEmpty() ? state.layout().centreY()
                : state.layout().lumenY(spot.lumen(), station).orElse(state.layout().centreY());
    }

    private Point pixel(double x, double y) {
        return canvas.toCanvas(new org.ferrule.picture.Point(x, y));
    }

    /** The figure that a handle would have if it were at a place. */
    Length figureAt(Handle handle, int x, int y) {
        org.ferrule.picture.Point place = canvas.toPicture(x, y);
        DeviceLayout layout = state.layout();
        return Length.ofMm(handle.spot().isStation() ? handle.spot().converted(layout.stationMm(place.xMm()))
                : layout.diameterMm(2 * Math.abs(place.yMm() - middle(handle.spot()))));
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
