/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.engine.chart.LumenReference;
import org.ferrule.model.Axis;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelPackage;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.fit.matrix.MatrixLine;
import org.ferrule.ui.fit.matrix.Side;

/** Hides lines of a chart, by a command that can be undone, and shows them again. */
final class HiddenLines {

    private final DocumentSession session;

    HiddenLines(DocumentSession session) {
        this.session = session;
    }

    List<String> of(Side side) {
        return axis(side).map(axis -> List.copyOf(axis.getHidden())).orElse(List.of());
    }

    void hide(Side side, MatrixLine line) {
        axis(side).ifPresent(axis -> {
            List<String> hidden = new ArrayList<>(axis.getHidden());
            hidden.add(reference(axis, line));
            session.set(axis, ModelPackage.Literals.AXIS__HIDDEN, hidden);
        });
    }

    void showAll(Side side) {
        axis(side).ifPresent(axis -> session.set(axis, ModelPackage.Literals.AXIS__HIDDEN, List.of()));
    }

    private Optional<Axis> axis(Side side) {
        return session.document().map(FitChart.class::cast)
                .map(chart -> side == Side.OUTER ? chart.getOuter() : chart.getInner());
    }

    /** As the axis lists the line; where it lists kinds only, by the id of the device. */
    static String reference(Axis axis, MatrixLine line) {
        LumenReference meant = LumenReference.parse(line.key());
        return axis.getDevices().stream().filter(listed -> names(LumenReference.parse(listed), meant)).findFirst()
                .orElse(line.head().id());
    }

    private static boolean names(LumenReference listed, LumenReference meant) {
        boolean device = listed.device().equals(meant.device()) || meant.device().endsWith("!" + listed.device());
        return device && (listed.lumen().isEmpty() || listed.lumen().equals(meant.lumen()));
    }
}
