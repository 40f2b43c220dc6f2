/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** How thick a section may be, or how wide: a diameter that is moved, and the partners that flip. */
package org.ferrule.ui.profile.required;
