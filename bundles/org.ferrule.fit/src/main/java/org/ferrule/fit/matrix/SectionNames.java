/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.List;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;

/** The names of sections that a cell may have to tell, each once, in the order of the stretches. */
final class SectionNames {
    private SectionNames() {
    }

    static List<String> of(MatrixLine line) {
        return of(line.device().bore(line.lumen()));
    }

    static List<String> of(ReadDevice inner) {
        return of(inner.outline(Phase.IN));
    }

    private static List<String> of(List<Stretch> stretches) {
        return stretches.stream().map(Stretch::name).distinct().toList();
    }
}
