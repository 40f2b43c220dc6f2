/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * A second opinion on the lanes of the solver: parts drawn at random within their tolerances and pushed through by a
 * method of its own.
 */
package org.ferrule.fit.engineering.opinion;
