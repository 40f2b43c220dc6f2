/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Questions of an engineer over the fit solver: how large a part may be, which dimensions decide, what a second method
 * says, what a bias changes, and whether published values are met. Everything asks the solver that answers charts.
 */
package org.ferrule.fit.engineering;
