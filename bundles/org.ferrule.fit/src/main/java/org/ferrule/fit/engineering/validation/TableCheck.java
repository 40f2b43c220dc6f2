/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.util.Optional;

/** Computes what one table publishes. Without state. */
interface TableCheck {

    /** The check of a row; absent where the row says what no figure can tell. */
    Optional<CheckResult> check(CheckRow row);
}
