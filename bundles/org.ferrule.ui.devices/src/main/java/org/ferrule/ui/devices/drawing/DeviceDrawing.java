/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.chart.drawing.LongitudinalDrawing;
import org.ferrule.chart.drawing.MarkerBand;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.engine.translate.DeviceTranslator;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.DeviceResolution;
import org.ferrule.model.Marker;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.ShaftSection;
import org.ferrule.picture.Caption;
import org.ferrule.picture.Picture;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.ui.Services;
import org.ferrule.ui.devices.part.Shown;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PictureOwner;
import org.ferrule.ui.picture.PictureUnits;
import org.ferrule.ui.preferences.FigureWords;
import org.ferrule.ui.preferences.UnitPreferences;

/**
 * Shows a device as it stands, drawn along its length; a click on a section tells its name. Borders and diameters can be
 * dragged.
 */
public final class DeviceDrawing {

    private static final String SECTION = "section:";
    private static final String NOTHING = "Select a device to see it drawn";

    private final PictureCanvas canvas;
    private final Consumer<String> words;
    private final FolderRules rules;
    private final UnitPreferences units = Services.get(UnitPreferences.class);
    private final DrawingHandles handles;
    private DeviceParts shown;

    /**
     * Creates a drawing of nothing.
     *
     * @param words is told by which rules tolerances are drawn
     */
    public DeviceDrawing(DocumentSession session, FormToolkit toolkit, Composite parent, Consumer<String> words) {
        Composite frame = toolkit.createComposite(parent, SWT.BORDER);
        frame.setLayout(new FillLayout());
        canvas = new PictureCanvas(frame);
        toolkit.adapt(canvas, true, false);
        canvas.ownedBy(() -> owner(session));
        handles = new DrawingHandles(session, canvas, new FigureWords(units));
        this.words = words;
        rules = new FolderRules(session.file(), this::redraw);
        Runnable unitsChanged = () -> canvas.getDisplay().asyncExec(this::redraw);
        units.addListener(unitsChanged);
        canvas.addDisposeListener(event -> {
            rules.dispose();
            units.removeListener(unitsChanged);
        });
        show(null);
    }

    private PictureOwner owner(DocumentSession session) {
        if (shown == null) {
            return PictureOwner.UNKNOWN;
        }
        DeviceParts parts = asDevice(shown);
        String name = Stream.of(parts.getName(), shown.getId()).filter(Objects::nonNull).findFirst().orElse("");
        return PictureOwner.of(Caption.of(name, "Library: " + session.file().getName(), rules.get().words()))
                .in(session.file().getParent());
    }

    /** Shows a device or a line as it stands now; null shows nothing. */
    public void show(DeviceParts device) {
        shown = device;
        redraw();
    }

    private void redraw() {
        if (canvas.isDisposed()) {
            return;
        }
        words.accept(shown == null ? "" : rules.get().words());
        if (shown == null) {
            handles.show(List.of());
            canvas.clear(NOTHING);
            return;
        }
        try {
            draw();
        } catch (RuleSetException | IllegalArgumentException e) {
            handles.show(List.of());
            canvas.clear("It cannot be drawn: " + e.getMessage());
        }
    }

    private void draw() {
        DeviceLibrary library = (DeviceLibrary) shown.eContainer();
        ReadDevice device = ReadDevice.of(new DeviceTranslator(library).translate(asDevice(shown)),
                rules.get().rules());
        List<MarkerBand> markers = markers();
        LongitudinalDrawing drawing = new LongitudinalDrawing(ReasonWords.english(PictureUnits.of(units)));
        handles.show(Handles.of(Shown.of(shown), device.device()));
        canvas.draw((width, height) -> picture(drawing, device, markers, width, height));
    }

    private Picture picture(LongitudinalDrawing drawing, ReadDevice device, List<MarkerBand> markers, double width,
            double height) {
        handles.layOut(drawing.layoutOfDevice(device, rules.get().rules(), markers, width, height));
        return drawing.ofDevice(device, rules.get().rules(), markers, width, height);
    }

    /** A line is drawn as a device that adds nothing to it. */
    private static Device asDevice(DeviceParts parts) {
        if (parts instanceof Device device) {
            return device;
        }
        Device device = ModelFactory.eINSTANCE.createDevice();
        DeviceParts copy = EcoreUtil.copy(parts);
        ModelPackage.Literals.DEVICE_PARTS.getEAllStructuralFeatures().stream().filter(copy::eIsSet)
                .forEach(feature -> device.eSet(feature, copyOf(copy.eGet(feature))));
        return device;
    }

    /** A list of its own: parts leave the former list as they enter the next. */
    private static Object copyOf(Object value) {
        return value instanceof List<?> list ? List.copyOf(list) : value;
    }

    private List<MarkerBand> markers() {
        return DeviceResolution.resolve(asDevice(shown)).device().getMarkers().stream()
                .flatMap(marker -> band(marker).stream()).toList();
    }

    private static Optional<MarkerBand> band(Marker marker) {
        Length width = length(marker.getWidth()).orElse(Length.ZERO);
        return length(marker.getAt()).map(edge -> new MarkerBand(edge.plus(width.dividedBy(2)), width));
    }

    private static Optional<Length> length(Dimension dimension) {
        return Optional.ofNullable(dimension).filter(Dimension::readable).map(Dimension::label);
    }

    /** Emphasizes the section with the name; null emphasizes none. */
    public void highlight(String section) {
        canvas.highlight(section == null ? null : SECTION + section);
    }

    /** Sets what is done when the user clicks at a section: it gets the section's name. */
    public void onSection(Consumer<String> action) {
        canvas.addListener(SWT.MouseDown, event -> {
            if (event.button == 1 && !handles.isAt(event.x, event.y)) {
                sectionAt(event.x, event.y).ifPresent(action);
            }
        });
    }

    /** The section at a place, or else the one above or below: lumens and wires cover much of their shaft. */
    private Optional<String> sectionAt(int x, int y) {
        return canvas.groupsAt(x, y).stream().flatMap(group -> group.frame().id().stream())
                .filter(id -> id.startsWith(SECTION)).map(id -> id.substring(SECTION.length())).findFirst()
                .or(() -> names().filter(name -> covers(name, x)).findFirst());
    }

    private Stream<String> names() {
        return shown == null ? Stream.empty()
                : DeviceResolution.resolve(asDevice(shown)).device().getSections().stream()
                        .map(ShaftSection::getName).filter(Objects::nonNull);
    }

    private boolean covers(String section, int x) {
        return canvas.boundsOf(SECTION + section).filter(box -> x >= box.x && x < box.x + box.width).isPresent();
    }

    /** Returns the canvas. */
    public PictureCanvas canvas() {
        return canvas;
    }
}
