/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * A device with everything that it inherits, as a copy that belongs to no document. It is a snapshot: later changes of
 * the device or its line do not show, and changes of the copy go nowhere.
 */
public final class ResolvedDevice {

    private final Device device;
    private final Device original;
    private final DeviceLine line;
    private final Map<EObject, EObject> originals;
    private final Map<EObject, Map<EStructuralFeature, EObject>> inherited;

    /** Takes over the maps, which nobody else may change: copying them would take as long as resolving. */
    ResolvedDevice(Device device, Device original, DeviceLine line, Map<EObject, EObject> originals,
            Map<EObject, Map<EStructuralFeature, EObject>> inherited) {
        this.device = device;
        this.original = original;
        this.line = line;
        this.originals = originals;
        this.inherited = inherited;
    }

    /** Returns the complete copy. */
    public Device device() {
        return device;
    }

    /** Returns the device as its document states it. */
    public Device original() {
        return original;
    }

    /** Returns the line, if the device has one. */
    public Optional<DeviceLine> line() {
        return Optional.ofNullable(line);
    }

    /**
     * Returns the object of the document that states a value: a part of the device or of its line.
     *
     * @param part an object of the complete copy
     * @param feature a feature of the part; of a list, whoever holds it, although some of its members may be inherited
     */
    public EObject statedBy(EObject part, EStructuralFeature feature) {
        EObject stater = inherited.getOrDefault(part, Map.of()).get(feature);
        return stater == null ? original(part) : stater;
    }

    /** Returns the object of the document of which an object of the complete copy is the copy. */
    public EObject original(EObject part) {
        EObject found = originals.get(part);
        if (found == null) {
            throw new IllegalArgumentException("not a part of the resolved device " + device.getId() + ": " + part);
        }
        return found;
    }

    /** Tells whether a value of the complete copy comes from the line. */
    public boolean isInherited(EObject part, EStructuralFeature feature) {
        return line != null && isWithin(line, statedBy(part, feature));
    }

    /** Tells whether a whole part of the complete copy comes from the line. */
    public boolean isInherited(EObject part) {
        return line != null && isWithin(line, original(part));
    }

    /**
     * Returns the source of a value: the one that its stater names, else the one that the holder of the stater names
     * and so on; a device without a source speaks by its line's.
     */
    public Optional<Source> source(EObject part, EStructuralFeature feature) {
        return sourceId(statedBy(part, feature)).flatMap(this::find);
    }

    private Optional<String> sourceId(EObject stater) {
        if (stater == null || stater instanceof Document) {
            return Optional.empty();
        }
        if (stater instanceof Sourced sourced && sourced.getSource() != null) {
            return Optional.of(sourced.getSource());
        }
        return sourceId(stater == original ? line : stater.eContainer());
    }

    private Optional<Source> find(String id) {
        return original.eContainer() instanceof Document document
                ? document.getSources().stream().filter(source -> id.equals(source.getId())).findFirst()
                : Optional.empty();
    }

    private static boolean isWithin(EObject holder, EObject part) {
        return part != null && (part == holder || isWithin(holder, part.eContainer()));
    }
}
