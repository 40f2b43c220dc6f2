/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.compare;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

import org.eclipse.swt.widgets.Composite;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Point;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.plot.PlotArea;
import org.ferrule.profile.plot.ProfilePlot;
import org.ferrule.profile.plot.View;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PictureRuler;
import org.ferrule.ui.picture.PictureZoom;

/** The plot of a comparison. It zooms by showing less of its axes, so that letters and lines keep their size. */
final class ComparePlot implements PictureZoom {

    private static final int CLOSEST_MM = 1;
    private static final double CLOSEST_DIAMETER_MM = 0.05;
    private static final double LEAST_MM = 60;
    private static final double DEVICE_MM = 5;
    private static final double LINE_MM = 3;

    private final PictureCanvas canvas;
    private ProfileComparison comparison;
    private ProfilePlot laid;
    private View view;
    private boolean bands = true;
    private boolean lumens = true;
    private boolean across;

    /**
     * Creates a plot of nothing.
     *
     * @param moved is told the station of the cursor, in millimetres from the landmark
     */
    ComparePlot(Composite parent, Consumer<OptionalDouble> moved) {
        canvas = new PictureCanvas(parent);
        canvas.zoomBy(this);
        canvas.readBy(picture -> ruler(), moved);
    }

    PictureCanvas canvas() {
        return canvas;
    }

    /** The part that is in sight; absent while there is nothing. */
    Optional<View> view() {
        return Optional.ofNullable(comparison).map(any -> view);
    }

    /** Shows a comparison; what is in sight stays in sight while stations count from the same landmark. */
    void show(ProfileComparison next) {
        boolean same = comparison != null && comparison.landmark().equals(next.landmark());
        comparison = next;
        view = (same ? view : View.distal(next)).withBands(bands).withLumens(lumens);
        canvas.draw(this::make);
    }

    void clear(String words) {
        comparison = null;
        laid = null;
        canvas.clear(words);
    }

    /** Chooses what is drawn beside the shafts. */
    void draw(boolean withBands, boolean withLumens) {
        bands = withBands;
        lumens = withLumens;
        if (comparison != null) {
            change(view.withBands(bands).withLumens(lumens));
        }
    }

    /** Chooses whether diameters zoom too. */
    void zoomAcross(boolean too) {
        across = too;
        if (!too && comparison != null) {
            change(view.of(Optional.empty()));
        }
    }

    /** Where there is too little height for plot, lanes and legend, the whole is laid out larger and shown smaller. */
    private Picture make(double widthMm, double heightMm) {
        double least = LEAST_MM + DEVICE_MM * comparison.devices().size() + LINE_MM * comparison.lines().size();
        double larger = Math.max(1, least / heightMm);
        laid = new ProfilePlot(comparison, view, words(), larger * widthMm, larger * heightMm);
        return laid.picture();
    }

    static ProfileWords words() {
        return ProfileWords.english(ShownUnits.now());
    }

    private Optional<PictureRuler> ruler() {
        return laid == null ? Optional.empty() : Optional.of(new PlotRuler(comparison, laid, words()));
    }

    @Override
    public void zoom(double factor, int x, int y) {
        if (laid == null) {
            return;
        }
        PlotArea area = laid.area();
        Point at = canvas.toPicture(x, y);
        View next = view;
        if (view.length().mm() / factor >= CLOSEST_MM) {
            double station = area.along(at.xMm());
            next = along(station - (station - area.left()) / factor, station + (area.right() - station) / factor);
        }
        change(across ? zoomedAcross(next, area, area.across(at.yMm()), factor) : next);
    }

    /** No farther than all there is. */
    private View along(double fromMm, double toMm) {
        View whole = View.whole(comparison);
        double from = Math.max(whole.from().mm(), fromMm);
        double to = Math.min(whole.to().mm(), toMm);
        return to - from < CLOSEST_MM ? view : view.along(Length.ofMm(from), Length.ofMm(to));
    }

    private static View zoomedAcross(View next, PlotArea area, double diameter, double factor) {
        double low = Math.max(0, diameter - (diameter - area.bottom()) / factor);
        double high = diameter + (area.top() - diameter) / factor;
        return high - low < CLOSEST_DIAMETER_MM ? next : across(next, low, high);
    }

    private static View across(View next, double low, double high) {
        return next.of(Optional.of(new View.Diameters(Length.ofMm(low), Length.ofMm(high))));
    }

    @Override
    public void pan(int dx, int dy) {
        if (laid == null) {
            return;
        }
        PlotArea area = laid.area();
        Point start = canvas.toPicture(0, 0);
        Point end = canvas.toPicture(dx, dy);
        double by = area.along(start.xMm()) - area.along(end.xMm());
        View whole = View.whole(comparison);
        double most = Math.max(0, whole.to().mm() - area.right());
        double least = Math.min(0, whole.from().mm() - area.left());
        View moved = view.moved(Length.ofMm(Math.max(least, Math.min(most, by))));
        double rise = area.across(start.yMm()) - area.across(end.yMm());
        double low = Math.max(0, area.bottom() + rise);
        change(view.diameters().isEmpty() || dy == 0 ? moved : across(moved, low, low + area.top() - area.bottom()));
    }

    @Override
    public void fitAll() {
        if (comparison != null) {
            change(View.whole(comparison).withBands(bands).withLumens(lumens));
        }
    }

    @Override
    public boolean isZoomed() {
        return comparison != null && (view.diameters().isPresent()
                || view.length().compareTo(View.whole(comparison).length()) < 0);
    }

    private void change(View next) {
        view = next;
        canvas.refresh();
    }
}
