/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** How things look: icons, colours that follow the theme, and the names of what is in the model. */
package org.ferrule.ui.look;
