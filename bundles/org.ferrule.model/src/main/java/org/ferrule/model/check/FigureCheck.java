/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.Features;
import org.ferrule.model.check.ModelProblem.Part;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.FigureKind;
import org.ferrule.quantity.Offset;
import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.QuantitySyntaxException;
import org.ferrule.quantity.QuantityWarning;

/** Figures can be read and are plausible for what they are. The outer diameters of a guidewire are a wire's. */
final class FigureCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        for (EStructuralFeature feature : object.eClass().getEAllAttributes()) {
            Object value = Features.isFigure(feature) ? object.eGet(feature) : null;
            syntax(value).ifPresent(problem -> report(object, feature, problem, examination));
            warnings(object, feature, value, examination)
                    .forEach(warning -> report(object, feature, warning, examination));
        }
    }

    private static Optional<QuantitySyntaxException> syntax(Object value) {
        if (value instanceof Dimension dimension) {
            return dimension.problem();
        }
        if (value instanceof Pressure pressure) {
            return pressure.problem();
        }
        return value instanceof Offset offset ? offset.problem() : Optional.empty();
    }

    private static List<QuantityWarning> warnings(EObject object, EStructuralFeature feature, Object value,
            Examination examination) {
        if (value instanceof Dimension dimension) {
            return kind(object, feature, examination).map(dimension::warnings).orElse(List.of());
        }
        return value instanceof Pressure pressure && pressure.readable() ? pressure.warnings() : List.of();
    }

    private static Optional<FigureKind> kind(EObject object, EStructuralFeature feature, Examination examination) {
        return Features.figureKind(feature).map(kind -> kind == FigureKind.OUTER_DIAMETER
                && isOfWire(object, examination) ? FigureKind.WIRE_DIAMETER : kind);
    }

    private static boolean isOfWire(EObject object, Examination examination) {
        if (object instanceof Device device) {
            return examination.resolved(device).device().getKind() == DeviceKind.GUIDEWIRE;
        }
        return object instanceof DeviceParts line ? line.getKind() == DeviceKind.GUIDEWIRE
                : object.eContainer() != null && isOfWire(object.eContainer(), examination);
    }

    private static void report(EObject object, EStructuralFeature feature, QuantitySyntaxException problem,
            Examination examination) {
        examination.addIn(ProblemCode.UNREADABLE_FIGURE, object, feature,
                new Part(problem.position(), problem.position()),
                problem.text(), problem.expected());
    }

    private static void report(EObject object, EStructuralFeature feature, QuantityWarning warning,
            Examination examination) {
        examination.addIn(ProblemCode.DOUBTFUL_FIGURE, object, feature, new Part(warning.start(), warning.end()),
                warning.message());
    }
}
