/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import java.util.stream.Stream;

import org.ferrule.fit.sample.SampleQuestion;

class ChanceCheckContractTest extends FitCheckContract {

    @Override
    protected FitCheck check() {
        return new ChanceCheck();
    }

    @Override
    protected Stream<SampleQuestion> questionsThatLackAFigure() {
        return Stream.empty();
    }
}
