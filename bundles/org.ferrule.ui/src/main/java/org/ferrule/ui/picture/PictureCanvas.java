/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.ferrule.picture.Group;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextStyle;

/**
 * Shows a picture. Either the picture is laid out for the room of the canvas, again whenever that changes; or it has a
 * size of its own and is made smaller or larger as a whole. Groups with a tooltip show it; a click tells the names of
 * the groups that were hit. It zooms and pans by keys and mouse, reads values at a cursor where it was given a ruler,
 * and what is seen can be copied and saved.
 */
public final class PictureCanvas extends Canvas {

    /** Lettering of this size is as large as the system's own. */
    private static final TextStyle LIKE_SYSTEM = TextStyle.ofPt(8);
    private static final double LEAST_MM = 10;

    private final TextFonts fonts;
    private final List<Consumer<List<String>>> clickListeners = new ArrayList<>();
    private final Highlight highlight = new Highlight();
    private final CanvasPaint painting;
    private final Magnifier magnifier = new Magnifier(this);
    private final CanvasCursor cursor = new CanvasCursor(this);
    private PictureZoom zoom = magnifier;
    private Supplier<PictureOwner> owner = () -> PictureOwner.UNKNOWN;
    private PictureMaker maker;
    private ShownPicture shown;
    private String message = "";
    private Predicate<Event> taker = event -> false;

    /** Creates a canvas that shows nothing yet. */
    public PictureCanvas(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED);
        fonts = new TextFonts(getDisplay());
        painting = new CanvasPaint(this, fonts, highlight);
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.Resize, event -> lay());
        addListener(SWT.MouseMove, this::hover);
        addListener(SWT.MouseDown, this::click);
        addListener(SWT.Dispose, event -> fonts.dispose());
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        new PictureMenu(this, new PictureKeys(this));
        getAccessible().addAccessibleListener(new Words());
    }

    /** Shows a picture that is laid out for the canvas, now and whenever the canvas changes its size. */
    public void draw(PictureMaker newMaker) {
        maker = Objects.requireNonNull(newMaker);
        message = "";
        lay();
    }

    /** Shows a picture as a whole, as large as the canvas allows. */
    public void show(Picture whole) {
        draw((width, height) -> whole);
    }

    /** Shows nothing but some words. */
    public void clear(String words) {
        maker = null;
        shown = null;
        cursor.laid(null);
        message = words;
        redraw();
    }

    /** Sets what is known about the pictures when they leave the program; asked whenever one does. */
    public void ownedBy(Supplier<PictureOwner> newOwner) {
        owner = Objects.requireNonNull(newOwner);
    }

    /** Zooms and pans by other means than enlarging the picture. */
    public void zoomBy(PictureZoom other) {
        zoom = Objects.requireNonNull(other);
    }

    /** Leaves the keys and presses of the mouse that the predicate takes to another, who listens to the canvas. */
    public void leaveTo(Predicate<Event> other) {
        taker = Objects.requireNonNull(other);
    }

    /** Tells whether an event is for another. */
    boolean leaves(Event event) {
        return taker.test(event);
    }

    /** Returns what zooms and pans. */
    public PictureZoom zoom() {
        return zoom;
    }

    /**
     * Gives the canvas a cursor that reads values: a click sets it, the left and right arrows move it, with Shift by the
     * larger step, and Escape takes it away.
     *
     * @param rulers returns the ruler of a picture that was just laid out, if values can be read off it
     * @param listener is told the value of the axis at the cursor, or that there is no cursor any more
     */
    public void readBy(Function<Picture, Optional<PictureRuler>> rulers, Consumer<OptionalDouble> listener) {
        cursor.readBy(rulers, listener);
    }

    /** Returns the lines that are read at the cursor; none while there is no cursor. */
    public List<String> reading() {
        return cursor.reading();
    }

    /** Puts the cursor at a value of the axis. */
    public void putCursor(double value) {
        cursor.put(value);
    }

    CanvasCursor cursor() {
        return cursor;
    }

    /** Returns what is shown, as it lies on the canvas. */
    Optional<ShownPicture> shown() {
        return Optional.ofNullable(shown);
    }

    /** Returns what is seen, as it is seen, to be copied or saved. */
    Optional<SeenPicture> seen() {
        return picture().map(whole -> new SeenPicture(magnifier.seen(whole, cursor.elements()), owner.get(),
                OffsetDateTime.now()));
    }

    /** Lays the picture out anew, as after a change of what it is made of. */
    public void refresh() {
        lay();
    }

    /** Returns the picture that is shown, laid out as it is. */
    public Optional<Picture> picture() {
        return Optional.ofNullable(shown).map(ShownPicture::picture);
    }

    /** Emphasizes the groups with the name; null emphasizes none. */
    public void highlight(String id) {
        if (highlight.change(id)) {
            redraw();
        }
    }

    /** Adds a listener that is told the names of the groups at which the user clicks, innermost first; maybe none. */
    public void onClick(Consumer<List<String>> listener) {
        clickListeners.add(listener);
    }

    /** Returns the groups with a name or a tooltip at a place of the canvas, innermost first. */
    public List<Group> groupsAt(int x, int y) {
        return shown == null ? List.of() : shown.groupsAt(x, y);
    }

    /** Returns the place of the picture at a place of the canvas, in millimetres; without a picture, nothing useful. */
    public Point toPicture(int x, int y) {
        return shown == null ? new Point(x, y) : shown.toPicture(x, y);
    }

    /** Returns where on the canvas the groups with the name lie. */
    public Optional<Rectangle> boundsOf(String id) {
        return Optional.ofNullable(shown).flatMap(known -> known.boundsOf(id));
    }

    /** Returns where on the canvas a place of the picture is shown; the corner where there is no picture. */
    public org.eclipse.swt.graphics.Point toCanvas(Point place) {
        return shown == null ? new org.eclipse.swt.graphics.Point(0, 0) : shown.toCanvas(place);
    }

    private void lay() {
        Rectangle room = getClientArea();
        if (maker == null || room.width <= 0 || room.height <= 0) {
            return;
        }
        double natural = fonts.pixelsPerMmFor(LIKE_SYSTEM);
        String before = picture().map(Picture::title).orElse("");
        Picture made = maker.make(Math.max(LEAST_MM, room.width / natural), Math.max(LEAST_MM, room.height / natural));
        if (!made.title().equals(before)) {
            magnifier.forget();
        }
        shown = new ShownPicture(made, magnifier.toScreen(made));
        cursor.laid(made);
        redraw();
    }

    private void paint(GC gc) {
        if (shown == null) {
            painting.words(gc, message);
        } else {
            painting.picture(gc, shown, cursor.elements());
        }
    }

    private void hover(Event event) {
        String tooltip = groupsAt(event.x, event.y).stream().flatMap(group -> group.frame().tooltip().stream())
                .findFirst().orElse(null);
        if (!Objects.equals(tooltip, getToolTipText())) {
            setToolTipText(tooltip);
        }
    }

    private void click(Event event) {
        if (event.button == 1) {
            List<String> ids = groupsAt(event.x, event.y).stream().flatMap(group -> group.frame().id().stream())
                    .toList();
            List.copyOf(clickListeners).forEach(listener -> listener.accept(ids));
        }
    }

    /** Tells those who cannot see the picture what it shows. */
    private final class Words extends AccessibleAdapter {

        @Override
        public void getName(AccessibleEvent event) {
            event.result = picture().map(Picture::title).orElse(message);
        }

        @Override
        public void getDescription(AccessibleEvent event) {
            event.result = picture().map(Picture::description).orElse("");
        }
    }
}
