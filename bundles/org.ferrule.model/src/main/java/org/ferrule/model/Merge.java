/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Makes a copy of a device that has what its line has beyond it; remembers for every value who states it. */
final class Merge {

    private static final Set<EStructuralFeature> NEVER = Set.of(ModelPackage.Literals.DEVICE_PARTS__ID,
            ModelPackage.Literals.ELEMENT__EXTRAS);

    /** If the device states one of these, it inherits none: the line's page is no page of the device's source. */
    private static final Set<EStructuralFeature> TOGETHER = Set.of(ModelPackage.Literals.SOURCED__SOURCE,
            ModelPackage.Literals.SOURCED__PAGE, ModelPackage.Literals.SOURCED__NOTE);

    private static final Set<EStructuralFeature> ROUND = Set.of(ModelPackage.Literals.SHAFT_SECTION__OD,
            ModelPackage.Literals.SHAFT_SECTION__OD_PROXIMAL, ModelPackage.Literals.SHAFT_SECTION__OD_AFTER,
            ModelPackage.Literals.SHAFT_SECTION__OD_AFTER_PROXIMAL);

    /** The three ways to give a cross-section. */
    private static final List<Set<EStructuralFeature>> CROSS_SECTIONS = List.of(ROUND,
            Set.of(ModelPackage.Literals.SHAFT_SECTION__OVAL), Set.of(ModelPackage.Literals.SHAFT_SECTION__DISCS));

    private static final Set<EReference> BY_NAME = Set.of(ModelPackage.Literals.DEVICE_PARTS__SECTIONS,
            ModelPackage.Literals.DEVICE_PARTS__LUMENS, ModelPackage.Literals.LUMEN__SECTIONS);

    private static final Set<EReference> OF_BOTH = Set.of(ModelPackage.Literals.DEVICE_PARTS__MARKERS,
            ModelPackage.Literals.DEVICE_PARTS__CLAIMS);

    private final Device device;
    private final DeviceLine line;
    private final Map<EObject, EObject> originals = new HashMap<>();
    private final Map<EObject, Map<EStructuralFeature, EObject>> inherited = new HashMap<>();

    Merge(Device device, DeviceLine line) {
        this.device = device;
        this.line = line;
    }

    /** Whether parts have no names by which some could take the place of some. */
    static boolean isStatedWhole(EReference place) {
        return place.isContainment() && place.isMany() && !BY_NAME.contains(place) && !OF_BOTH.contains(place);
    }

    ResolvedDevice run() {
        Device copy = copy(device);
        if (line != null) {
            inherit(copy, line);
        }
        return new ResolvedDevice(copy, device, line, originals, inherited);
    }

    private <T extends EObject> T copy(T original) {
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        @SuppressWarnings("unchecked")
        T copy = (T) copier.copy(original);
        copier.forEach((from, to) -> originals.put(to, from));
        return copy;
    }

    private void inherit(EObject target, EObject from) {
        List<EStructuralFeature> open = from.eClass().getEAllStructuralFeatures().stream()
                .filter(feature -> from.eIsSet(feature) && !isExcluded(target, feature)).toList();
        open.forEach(feature -> inherit(target, from, feature));
    }

    private void inherit(EObject target, EObject from, EStructuralFeature feature) {
        if (feature instanceof EReference reference && BY_NAME.contains(reference)) {
            mergeByName(list(target, reference), list(from, reference));
        } else if (feature instanceof EReference reference && OF_BOTH.contains(reference)) {
            list(target, reference).addAll(0, list(from, reference).stream().map(this::copy).toList());
        } else if (!target.eIsSet(feature)) {
            take(target, from, feature);
        } else if (feature instanceof EReference && !feature.isMany()) {
            inherit((EObject) target.eGet(feature), (EObject) from.eGet(feature));
        }
    }

    private void take(EObject target, EObject from, EStructuralFeature feature) {
        if (feature instanceof EReference reference) {
            target.eSet(feature, reference.isMany() ? list(from, reference).stream().map(this::copy).toList()
                    : copy((EObject) from.eGet(feature)));
        } else {
            target.eSet(feature, from.eGet(feature));
        }
        inherited.computeIfAbsent(target, t -> new HashMap<>()).put(feature, from);
    }

    /** The order is the line's, then what the device adds. Parts without a name are matched in their order. */
    private void mergeByName(List<EObject> target, List<EObject> from) {
        List<EObject> left = new ArrayList<>(target);
        List<EObject> merged = new ArrayList<>();
        for (EObject part : from) {
            EObject match = left.stream().filter(other -> Objects.equals(name(other), name(part))).findFirst()
                    .orElse(null);
            if (match == null) {
                merged.add(copy(part));
            } else {
                left.remove(match);
                merged.add(match);
                inherit(match, part);
            }
        }
        merged.addAll(left);
        target.clear();
        target.addAll(merged);
    }

    private static boolean isExcluded(EObject target, EStructuralFeature feature) {
        return NEVER.contains(feature)
                || TOGETHER.contains(feature) && isAnySet(target, TOGETHER)
                || CROSS_SECTIONS.stream().anyMatch(way -> way.contains(feature)) && hasAnotherWay(target, feature);
    }

    private static boolean hasAnotherWay(EObject target, EStructuralFeature feature) {
        return CROSS_SECTIONS.stream().anyMatch(way -> !way.contains(feature) && isAnySet(target, way));
    }

    private static boolean isAnySet(EObject object, Set<EStructuralFeature> features) {
        return features.stream().anyMatch(feature -> isOf(object.eClass(), feature) && object.eIsSet(feature));
    }

    private static boolean isOf(EClass type, EStructuralFeature feature) {
        return feature.getEContainingClass().isSuperTypeOf(type);
    }

    private static Object name(EObject part) {
        return part.eGet(part.eClass().getEStructuralFeature("name"));
    }

    @SuppressWarnings("unchecked")
    private static List<EObject> list(EObject object, EReference reference) {
        return (List<EObject>) object.eGet(reference);
    }
}
