/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Shows pictures of {@code org.ferrule.picture} on the screen: painted sharp at every scale, with tooltips and clicks. */
package org.ferrule.ui.picture;
