/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * What is wrong or doubtful in documents. {@link org.ferrule.ui.problem.ProblemSource}s find it, on the saved and on the
 * unsaved state; it stands in the Problems view as markers and in the editors at the field.
 */
package org.ferrule.ui.problem;
