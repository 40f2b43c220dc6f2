/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Shows pictures of {@code org.ferrule.picture} on the screen: painted sharp at every scale, with tooltips and clicks,
 * zoom and pan, a cursor that reads values; and copies and saves what is seen.
 */
package org.ferrule.ui.picture;
