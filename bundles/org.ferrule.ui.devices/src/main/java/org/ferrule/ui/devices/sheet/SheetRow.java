/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Source;
import org.ferrule.ui.devices.part.CellWords;
import org.ferrule.ui.devices.part.Shown;

/** A device or a line in the table. Its figures are looked up when they are needed. */
public final class SheetRow {

    private static final List<EAttribute> SEARCHED = List.of(Literals.DEVICE_PARTS__ID, Literals.DEVICE_PARTS__NAME,
            Literals.DEVICE_PARTS__MAKER, Literals.DEVICE_PARTS__KIND, Literals.DEVICE_PARTS__SIZE,
            Literals.DEVICE_PARTS__MODEL);

    private final DeviceParts parts;
    private final DeviceLine line;
    private final Source source;
    private Map<FigureColumn, Figure> figures;
    private String searched;

    /**
     * Creates a row.
     *
     * @param line the line of the device, or null
     * @param source the source of the device, else of its line, or null
     */
    SheetRow(DeviceParts parts, DeviceLine line, Source source) {
        this.parts = parts;
        this.line = line;
        this.source = source;
    }

    /** Returns the device or line. */
    public DeviceParts parts() {
        return parts;
    }

    /** Returns the line of the device, if it has one. */
    public Optional<DeviceLine> line() {
        return Optional.ofNullable(line);
    }

    /** Returns the source that the device cites, else its line. */
    public Optional<Source> source() {
        return Optional.ofNullable(source);
    }

    /** Tells whether a value comes from the line. */
    boolean inherits(EAttribute feature) {
        return feature != Literals.DEVICE_PARTS__ID && !parts.eIsSet(feature) && line != null
                && line.eClass().getEAllAttributes().contains(feature) && line.eIsSet(feature);
    }

    /** Returns what is stated or inherited for an attribute, as it was typed; empty for nothing. */
    public String text(EAttribute feature) {
        return CellWords.of(inherits(feature) ? line : parts, feature);
    }

    /** Returns the value that is stated or inherited. */
    Object value(EAttribute feature) {
        return inherits(feature) ? line.eGet(feature) : parts.eGet(feature);
    }

    /** Returns the kind, or null. */
    public DeviceKind kind() {
        return (DeviceKind) value(Literals.DEVICE_PARTS__KIND);
    }

    /** Tells whether its figures were looked up already. */
    boolean knowsFigures() {
        return figures != null;
    }

    /** Returns a figure of the device with all that it inherits. */
    Figure figure(FigureColumn column) {
        if (figures == null) {
            Shown shown = Shown.of(parts);
            Map<FigureColumn, Figure> found = new HashMap<>();
            FigureColumn.ALL.forEach(each -> found.put(each, Figure.at(each.place(shown))));
            figures = found;
        }
        return figures.get(column);
    }

    /** Tells whether every word of the filter is found in its id, name, maker, kind, size or catalogue code. */
    boolean matches(List<String> words) {
        return words.stream().allMatch(word -> searched().contains(word));
    }

    private String searched() {
        if (searched == null) {
            searched = SEARCHED.stream().map(this::text).reduce("", (a, b) -> a + "\n" + b).toLowerCase(Locale.ROOT);
        }
        return searched;
    }

    /** Returns the words of a filter as they are searched for. */
    static List<String> words(String filter) {
        return Stream.of(filter.strip().toLowerCase(Locale.ROOT).split("\\s+")).filter(word -> !word.isEmpty())
                .toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SheetRow row && row.parts == parts;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(parts);
    }
}
