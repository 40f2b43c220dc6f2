/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Copies documents of the model into immutable records of the kernel: here objects of the model end. */
package org.ferrule.engine.translate;
