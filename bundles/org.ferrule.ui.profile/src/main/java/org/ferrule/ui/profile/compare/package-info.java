/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The view in which two to eight devices are shown over each other along their length. */
package org.ferrule.ui.profile.compare;
