/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.engine.catalogue.UnknownDevices;
import org.ferrule.engine.chart.LumenReference;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.ModelPackage.Literals;

/**
 * The ids by which a plan knows devices. An id that two libraries share says nothing, so that none of both can be
 * planned with.
 */
final class DeviceIds {
    private final Catalogue catalogue;
    private final PlanProblems problems;
    private final UnknownDevices unknown = new UnknownDevices();
    private final List<Device> devices = new ArrayList<>();
    private final Set<String> shared = new HashSet<>();
    private final Set<String> known = new HashSet<>();

    DeviceIds(Catalogue catalogue, PlanProblems problems) {
        this.catalogue = catalogue;
        this.problems = problems;
        for (CataloguedDevice device : catalogue.devices()) {
            if (!known.add(device.device().id())) {
                shared.add(device.device().id());
            }
        }
        known.removeAll(shared);
        catalogue.devices().stream().map(CataloguedDevice::device).filter(d -> known.contains(d.id()))
                .forEach(devices::add);
    }

    /** All devices that can be planned with, and those of which nothing is known. */
    List<Device> devices() {
        return List.copyOf(devices);
    }

    /** Tells of the ids that libraries share. */
    void reportShared(CaseDocument file) {
        shared.stream().sorted().forEach(id -> problems.add(file, Literals.CASE_DOCUMENT__LIBRARIES,
                "two devices are called \"" + id + "\", so that none of them is planned with"));
    }

    /** The id of a device; the reference as it stands where it names none that can be planned with. */
    String id(EObject subject, EStructuralFeature feature, String reference) {
        try {
            String id = catalogue.device(reference).device().id();
            if (known.contains(id)) {
                return id;
            }
            problems.add(subject, feature, "\"" + id + "\" is the id of two devices");
        } catch (ReferenceException e) {
            problems.add(subject, feature, e.getMessage());
        }
        return reference;
    }

    /**
     * The id of a device that lies in the system. Where the reference names none, something of which nothing is known
     * takes its place, so that nothing seems easier than it is.
     *
     * @param kind what it would be
     */
    String inPlace(EObject subject, EStructuralFeature feature, String reference, DeviceKind kind) {
        LumenReference lumen = LumenReference.parse(reference);
        lumen.lumen().ifPresent(name -> problems.add(subject, feature,
                "a plan goes through the lumen that is usually meant, not through \"" + name + "\""));
        String id = id(subject, feature, lumen.device());
        return known.contains(id) ? id : standIn(id, kind);
    }

    /** The id of something of which nothing is known but what it is. */
    String standIn(String words, DeviceKind kind) {
        Device device = unknown.called(words, kind);
        if (known.add(device.id())) {
            devices.add(device);
        }
        return device.id();
    }
}
