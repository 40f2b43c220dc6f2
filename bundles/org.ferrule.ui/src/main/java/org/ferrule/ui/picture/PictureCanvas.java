/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.ferrule.picture.Box;
import org.ferrule.picture.Group;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Path;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextStyle;
import org.ferrule.picture.Transform;

/**
 * Shows a picture. Either the picture is laid out for the room of the canvas, again whenever that changes; or it has a
 * size of its own and is made smaller or larger as a whole. Groups with a tooltip show it; a click tells the names of
 * the groups that were hit.
 */
public final class PictureCanvas extends Canvas {

    /** Lettering of this size is as large as the system's own. */
    private static final TextStyle LIKE_SYSTEM = TextStyle.ofPt(8);
    private static final double LEAST_MM = 10;
    private static final double NEAR_PIXELS = 3;
    private static final int HIGHLIGHT_ALPHA = 110;
    private static final int HIGHLIGHT_PIXELS = 4;

    private final TextFonts fonts;
    private final List<Consumer<List<String>>> clickListeners = new ArrayList<>();
    private PictureMaker maker;
    private Picture picture;
    private Transform toScreen = Transform.IDENTITY;
    private String highlighted;
    private String message = "";

    /** Creates a canvas that shows nothing yet and never takes the focus. */
    public PictureCanvas(Composite parent) {
        this(parent, SWT.NO_FOCUS);
    }

    /**
     * Creates a canvas that shows nothing yet.
     *
     * @param style {@link SWT#NO_FOCUS}, or nothing for a canvas in which something can be done by keyboard
     */
    public PictureCanvas(Composite parent, int style) {
        super(parent, SWT.DOUBLE_BUFFERED | style);
        fonts = new TextFonts(getDisplay());
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.Resize, event -> lay());
        addListener(SWT.MouseMove, this::hover);
        addListener(SWT.MouseDown, this::click);
        addListener(SWT.Dispose, event -> fonts.dispose());
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
        picture = null;
        message = words;
        redraw();
    }

    /** Returns the picture that is shown, laid out as it is. */
    public Optional<Picture> picture() {
        return Optional.ofNullable(picture);
    }

    /** Emphasizes the groups with the name; null emphasizes none. */
    public void highlight(String id) {
        if (!Objects.equals(id, highlighted)) {
            highlighted = id;
            redraw();
        }
    }

    /** Adds a listener that is told the names of the groups at which the user clicks, innermost first; maybe none. */
    public void onClick(Consumer<List<String>> listener) {
        clickListeners.add(listener);
    }

    /** Returns the groups with a name or a tooltip at a place of the canvas, innermost first. */
    public List<Group> groupsAt(int x, int y) {
        if (picture == null) {
            return List.of();
        }
        return picture.groupsAt(toScreen.inverse().apply(new Point(x, y)), NEAR_PIXELS / toScreen.scale());
    }

    /** Returns where on the canvas the groups with the name lie. */
    public Optional<Rectangle> boundsOf(String id) {
        return outlines(id).stream().map(Path::bounds).reduce(Box::union)
                .map(box -> new Rectangle((int) Math.floor(box.xMm()), (int) Math.floor(box.yMm()),
                        (int) Math.ceil(box.widthMm()), (int) Math.ceil(box.heightMm())));
    }

    /** Returns the place of the picture that is shown at a place of the canvas. */
    public Point toPicture(int x, int y) {
        return toScreen.inverse().apply(new Point(x, y));
    }

    /** Returns where on the canvas a place of the picture is shown. */
    public org.eclipse.swt.graphics.Point toCanvas(Point place) {
        Point shown = toScreen.apply(place);
        return new org.eclipse.swt.graphics.Point((int) Math.round(shown.xMm()), (int) Math.round(shown.yMm()));
    }

    private List<Path> outlines(String id) {
        return picture == null ? List.of()
                : Outlines.of(picture, id).stream().map(path -> path.transformed(toScreen)).toList();
    }

    private void lay() {
        Rectangle room = getClientArea();
        if (maker == null || room.width <= 0 || room.height <= 0) {
            return;
        }
        double natural = fonts.pixelsPerMmFor(LIKE_SYSTEM);
        picture = maker.make(Math.max(LEAST_MM, room.width / natural), Math.max(LEAST_MM, room.height / natural));
        double scale = Math.min(room.width / picture.widthMm(), room.height / picture.heightMm());
        toScreen = Transform.scaling(scale, scale).then(Transform.translation(
                (room.width - scale * picture.widthMm()) / 2, (room.height - scale * picture.heightMm()) / 2));
        redraw();
    }

    private void paint(GC gc) {
        gc.setBackground(ScreenInks.color(Ink.PAPER));
        gc.fillRectangle(getClientArea());
        if (picture == null) {
            paintMessage(gc);
        } else {
            new GcPainter(gc, fonts, toScreen).paint(picture.elements());
            paintHighlight(gc);
        }
    }

    private void paintMessage(GC gc) {
        Rectangle room = getClientArea();
        gc.setForeground(ScreenInks.color(Ink.MUTED));
        org.eclipse.swt.graphics.Point size = gc.textExtent(message);
        gc.drawText(message, (room.width - size.x) / 2, (room.height - size.y) / 2, SWT.DRAW_TRANSPARENT);
    }

    private void paintHighlight(GC gc) {
        if (highlighted == null) {
            return;
        }
        gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION));
        gc.setLineWidth(HIGHLIGHT_PIXELS);
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setAlpha(HIGHLIGHT_ALPHA);
        outlines(highlighted).forEach(outline -> {
            org.eclipse.swt.graphics.Path path = ScreenPath.of(gc.getDevice(), outline);
            gc.drawPath(path);
            path.dispose();
        });
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
            event.result = picture == null ? message : picture.title();
        }

        @Override
        public void getDescription(AccessibleEvent event) {
            event.result = picture == null ? "" : picture.description();
        }
    }
}
