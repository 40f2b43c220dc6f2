/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Quick fixes: what a doubtful dimension could mean instead, offered at its marker and at its field. */
package org.ferrule.ui.internal.fix;
