/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** The command line: the same engine as the workbench, without a display. */
package org.ferrule.cli;
