/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Set;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.rules.AfterUseRule;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

class GrowthTest {

    @Test
    void profileAfterUseIsRoundedUpAndItsCentreAssumed() {
        AfterUseRule rule = new AfterUseRule(Set.of(), new BigDecimal("1.05"), new BigDecimal("1.11"),
                new BigDecimal("1.2"), SourceRef.NONE);
        assertEquals(new Figure(new Length(11), new Length(12), new Length(12), true),
                Growth.of(Figure.exactly(new Length(10)), rule));
    }
}
