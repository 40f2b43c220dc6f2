/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.sample;

import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Dimension;

/** A bench result in the making: by default of five samples, in any lumen, with an unreported wire. */
public final class SampleBench {
    private final String inner;
    private final String outer;
    private final boolean passed;
    private String lumen = "";
    private Optional<Dimension> wire = Optional.empty();
    private Set<Phase> covers = Set.of();

    private SampleBench(String inner, String outer, boolean passed) {
        this.inner = inner;
        this.outer = outer;
        this.passed = passed;
    }

    public static SampleBench passed(String inner, String outer) {
        return new SampleBench(inner, outer, true);
    }

    public static SampleBench didNotPass(String inner, String outer) {
        return new SampleBench(inner, outer, false);
    }

    public SampleBench lumen(String name) {
        lumen = name;
        return this;
    }

    public SampleBench wire(String text) {
        wire = Texts.printed(text);
        return this;
    }

    public SampleBench covers(Phase... phases) {
        covers = Set.of(phases);
        return this;
    }

    public BenchResult result() {
        return new BenchResult(outer, lumen, inner, wire, passed, covers, 5, new SourceRef("bench book", "1", "12"));
    }
}
