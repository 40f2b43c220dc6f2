/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Checks of documents beyond their syntax: ids, references, geometry that contradicts itself, figures that cannot be
 * read or are implausible. A check says what it found as a code with arguments; the English stands in one place.
 */
package org.ferrule.model.check;
