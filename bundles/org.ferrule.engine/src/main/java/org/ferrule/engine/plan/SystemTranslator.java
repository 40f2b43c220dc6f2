/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.Optional;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.escalation.state.SystemState.PlacedExtension;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.SystemInPlace;
import org.ferrule.model.ThroughExtension;
import org.ferrule.quantity.Length;

/** Reads what is in place. For what no library describes stands something of which nothing is known. */
final class SystemTranslator {
    private final DeviceIds devices;
    private final PlanProblems problems;

    SystemTranslator(DeviceIds devices, PlanProblems problems) {
        this.devices = devices;
        this.problems = problems;
    }

    SystemState translate(CaseDocument file) {
        SystemInPlace system = file.getSystem();
        if (system == null) {
            problems.add(file, Literals.CASE_DOCUMENT__SYSTEM, "the case does not say what is in place");
            return new SystemState(Optional.empty(), Optional.empty(), guide(), Optional.empty(), Optional.empty(),
                    Optional.empty(), Optional.empty(), Optional.empty());
        }
        return new SystemState(
                device(system, Literals.SYSTEM_IN_PLACE__SHEATH, DeviceKind.INTRODUCER_SHEATH),
                device(system, Literals.SYSTEM_IN_PLACE__VALVE, DeviceKind.HAEMOSTASIS_VALVE), guide(system),
                Optional.ofNullable(system.getExtension()).map(this::extension),
                device(system, Literals.SYSTEM_IN_PLACE__MICROCATHETER, DeviceKind.MICROCATHETER),
                device(system, Literals.SYSTEM_IN_PLACE__MAIN_WIRE, DeviceKind.GUIDEWIRE),
                device(system, Literals.SYSTEM_IN_PLACE__SECOND_WIRE, DeviceKind.GUIDEWIRE),
                device(system, Literals.SYSTEM_IN_PLACE__ANCHOR, DeviceKind.BALLOON_CATHETER));
    }

    private String guide(SystemInPlace system) {
        Optional<String> named = device(system, Literals.SYSTEM_IN_PLACE__GUIDE, DeviceKind.GUIDE_CATHETER);
        if (named.isEmpty()) {
            problems.add(system, Literals.SYSTEM_IN_PLACE__GUIDE, "the case does not say which guide catheter is in");
        }
        return named.orElseGet(this::guide);
    }

    private String guide() {
        return devices.standIn("a guide catheter", DeviceKind.GUIDE_CATHETER);
    }

    /** Where it cannot be read how far it protrudes, nothing is known of the extension. */
    private PlacedExtension extension(ThroughExtension extension) {
        Optional<Length> protrusion = protrusion(extension);
        String words = extension.getExtension() == null ? "a guide extension" : extension.getExtension();
        if (extension.getExtension() == null || protrusion.isEmpty()) {
            problems.add(extension, Literals.THROUGH_EXTENSION__EXTENSION,
                    "it is not said which guide extension is in, or how far it protrudes");
            return new PlacedExtension(devices.standIn(words, DeviceKind.GUIDE_EXTENSION), Length.ZERO);
        }
        return new PlacedExtension(devices.inPlace(extension, Literals.THROUGH_EXTENSION__EXTENSION, words,
                DeviceKind.GUIDE_EXTENSION), protrusion.get());
    }

    /** At the tip of the guide catheter when not stated, as in charts. */
    private static Optional<Length> protrusion(ThroughExtension extension) {
        if (extension.getProtrusion() == null) {
            return Optional.of(Length.ZERO);
        }
        return extension.getProtrusion().readable() ? Optional.of(extension.getProtrusion().value())
                : Optional.empty();
    }

    private Optional<String> device(SystemInPlace system, EStructuralFeature feature, DeviceKind kind) {
        return Optional.ofNullable((String) system.eGet(feature))
                .map(reference -> devices.inPlace(system, feature, reference, kind));
    }
}
