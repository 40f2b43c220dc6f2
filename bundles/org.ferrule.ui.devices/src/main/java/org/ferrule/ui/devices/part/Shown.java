/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceResolution;
import org.ferrule.model.ResolvedDevice;

/**
 * What is shown of one object: what the document states of it, what its device's line states of it, and both together.
 * Two are equal if they are about the same objects of the document.
 */
public final class Shown {

    private static final String NAME = "name";

    private final EObject own;
    private final EObject line;
    private final EObject complete;
    private final ResolvedDevice resolution;
    private final Shown holder;
    private final EReference place;

    private Shown(EObject own, EObject line, EObject complete, ResolvedDevice resolution, Shown holder,
            EReference place) {
        this.own = own;
        this.line = line;
        this.complete = complete;
        this.resolution = resolution;
        this.holder = holder;
        this.place = place;
    }

    /** Shows an object; a device together with what it inherits now. */
    public static Shown of(EObject object) {
        if (object instanceof Device device) {
            ResolvedDevice resolved = DeviceResolution.resolve(device);
            return new Shown(device, resolved.line().orElse(null), resolved.device(), resolved, null, null);
        }
        return new Shown(object, null, object, null, null, null);
    }

    /** Returns the parts that a feature holds, with those that are inherited. */
    public List<Shown> parts(EReference feature) {
        Object value = complete.eGet(feature);
        List<?> parts = value instanceof List<?> list ? list : value == null ? List.of() : List.of(value);
        return parts.stream().map(part -> part((EObject) part, feature)).toList();
    }

    private Shown part(EObject part, EReference feature) {
        EObject original = resolution == null ? part : resolution.original(part);
        boolean inherited = resolution != null && resolution.isInherited(part);
        return new Shown(inherited ? null : original, inherited ? original : counterpart(original, feature), part,
                resolution, this, feature);
    }

    /**
     * Returns what is shown of an object inside of it.
     *
     * @param part an object inside of {@link #complete}, or that itself
     */
    public Shown within(EObject part) {
        return part == complete ? this
                : within(part.eContainer()).parts(part.eContainmentFeature()).stream()
                        .filter(shown -> shown.complete == part).findFirst().orElseThrow();
    }

    /**
     * Tells whether a value comes from the line.
     *
     * @param part an object inside of {@link #complete}, or that itself
     */
    public boolean inherits(EObject part, EAttribute feature) {
        return resolution != null && resolution.isInherited(part, feature);
    }

    /** What the line states of a part that the device states too. */
    private EObject counterpart(EObject part, EReference feature) {
        if (line == null || !feature.isMany()) {
            return line == null ? null : (EObject) line.eGet(feature);
        }
        EStructuralFeature name = part.eClass().getEStructuralFeature(NAME);
        return name == null ? null : ((List<?>) line.eGet(feature)).stream().map(EObject.class::cast)
                .filter(other -> Objects.equals(other.eGet(name), part.eGet(name))).findFirst().orElse(null);
    }

    /** Returns what the document states of it; nothing if it is only inherited. */
    public Optional<EObject> own() {
        return Optional.ofNullable(own);
    }

    /** Returns the object of the document that states it: its own, else the line's. */
    public EObject stater() {
        return own == null ? line : own;
    }

    /** Returns it with all that it inherits. Not to be changed. */
    public EObject complete() {
        return complete;
    }

    /** Tells whether only the line states it. */
    public boolean isInherited() {
        return own == null;
    }

    /** Returns what holds it; null for an object as a whole. */
    public Shown holder() {
        return holder;
    }

    /** Returns the feature that holds it; null for an object as a whole. */
    public EReference place() {
        return place;
    }

    /** Returns an object whose values are to be shown as hints: what holds if this one states nothing; or null. */
    public EObject hints() {
        if (line == null) {
            return null;
        }
        EObject hints = EcoreUtil.create(complete.eClass());
        complete.eClass().getEAllAttributes().forEach(attribute -> hint(hints, attribute));
        return hints;
    }

    private void hint(EObject hints, EAttribute attribute) {
        EObject from = own != null && own.eIsSet(attribute) ? line : complete;
        if (from.eClass().getEAllAttributes().contains(attribute) && from.eIsSet(attribute)) {
            hints.eSet(attribute, from.eGet(attribute));
        }
    }

    /** Tells whether it is the same part, perhaps overridden since, or inherited again. */
    boolean isSamePart(Shown other) {
        return equals(other) || line != null && line == other.line;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Shown shown && shown.stater() == stater();
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(stater());
    }
}
