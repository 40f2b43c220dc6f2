/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.effect;

import java.util.function.Supplier;

import org.eclipse.core.resources.IFile;
import org.ferrule.chart.look.VerdictLook;

/**
 * A verdict that an edit changes.
 *
 * @param chart the chart
 * @param outer what the row of the pair is called
 * @param inner what its column is called
 * @param phase going in, or coming out where only that changes
 * @param before the verdict as saved
 * @param after the verdict as edited
 * @param reason why it is so after the edit, worked out when it is asked for
 */
record VerdictChange(IFile chart, String outer, String inner, String phase, VerdictLook before, VerdictLook after,
        Supplier<String> reason) {
}
