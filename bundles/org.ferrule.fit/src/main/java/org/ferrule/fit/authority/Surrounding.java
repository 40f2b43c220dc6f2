/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import java.util.List;
import java.util.stream.Stream;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.FitQuestion;

/**
 * A lumen on the way of the device that is asked about, of which statements may speak.
 *
 * @param device that it belongs to
 * @param lumen of {@code device}
 */
record Surrounding(Device device, Lumen lumen) {

    /** The lumens on the way: that of the outer device, and that of the extension through which it leads. */
    static List<Surrounding> of(FitQuestion question) {
        Surrounding outer = new Surrounding(question.outer().device(), question.lumen());
        return question.conditions().through()
                .map(t -> Stream.of(outer, new Surrounding(t.extension().device(), t.lumen())).toList())
                .orElseGet(() -> List.of(outer));
    }

    /** Whether it is the one that lies closest round the device. */
    boolean isInnermost(FitQuestion question) {
        return question.conditions().through().map(t -> t.extension().device() == device).orElse(true);
    }
}
