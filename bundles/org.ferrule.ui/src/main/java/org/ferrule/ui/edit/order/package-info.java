/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Elements of a list are put into another order: by keys, by buttons, by dragging; several at a time stand together. */
package org.ferrule.ui.edit.order;
