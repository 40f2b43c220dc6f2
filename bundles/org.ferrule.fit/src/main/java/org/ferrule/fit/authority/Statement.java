/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import java.util.Objects;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.verdict.Reason;

/**
 * What a claim or a bench result says of a pair.
 *
 * @param yes whether it says that the pair goes together
 * @param reason in numbers
 * @param source where it was read
 */
record Statement(boolean yes, Reason reason, SourceRef source) {
    Statement {
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(source, "source");
    }
}
