/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceResolution;
import org.ferrule.model.ResolvedDevice;
import org.ferrule.model.check.ModelProblem.Part;

/**
 * One look at a document by all rules: what they find, each problem once (what forty devices inherit from their line is
 * wrong once), and the complete devices that they look at.
 */
public final class Examination {

    private final Set<ModelProblem> problems = new LinkedHashSet<>();
    private final Map<Device, ResolvedDevice> resolved = new IdentityHashMap<>();

    /** Returns a device with what it inherits; resolved once for all rules. */
    public ResolvedDevice resolved(Device device) {
        return resolved.computeIfAbsent(device, DeviceResolution::resolve);
    }

    /** Adds a problem of a value, or of a whole object if the feature is null. */
    public void add(ProblemCode code, EObject subject, EStructuralFeature feature, String... arguments) {
        problems.add(new ModelProblem(subject, feature, ModelProblem.WHOLE, code, List.of(arguments), null));
    }

    /** Adds a problem of one of the values of a feature. */
    public void addAt(ProblemCode code, EObject subject, EStructuralFeature feature, int index, String... arguments) {
        problems.add(new ModelProblem(subject, feature, index, code, List.of(arguments), null));
    }

    /** Adds a problem of a part of a text. */
    public void addIn(ProblemCode code, EObject subject, EStructuralFeature feature, Part part, String... arguments) {
        problems.add(new ModelProblem(subject, feature, ModelProblem.WHOLE, code, List.of(arguments), part));
    }

    /** Returns the problems in the order in which they were found. */
    public List<ModelProblem> problems() {
        return List.copyOf(problems);
    }
}
