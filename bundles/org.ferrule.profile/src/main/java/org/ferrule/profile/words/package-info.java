/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Words for comparisons, shared by pages, the command line and the workbench. */
package org.ferrule.profile.words;
