/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntFunction;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;

/** The names of sections that a cell may have to tell, each once, in the order of the stretches. */
final class SectionNames {
    private final MatrixQuestion question;
    private final AtomicReferenceArray<List<String>> ofLines;
    private final AtomicReferenceArray<List<String>> ofColumns;

    /** The names of a question's lines and columns; each is looked up when it is asked for first. */
    SectionNames(MatrixQuestion question) {
        this.question = question;
        this.ofLines = new AtomicReferenceArray<>(question.outer().size());
        this.ofColumns = new AtomicReferenceArray<>(question.inner().size());
    }

    List<String> ofLine(int line) {
        return kept(ofLines, line, i -> of(question.outer().get(i)));
    }

    List<String> ofColumn(int column) {
        return kept(ofColumns, column, i -> of(question.inner().get(i)));
    }

    private static List<String> kept(AtomicReferenceArray<List<String>> names, int index,
            IntFunction<List<String>> source) {
        List<String> known = names.get(index);
        if (known == null) {
            known = source.apply(index);
            names.set(index, known);
        }
        return known;
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
