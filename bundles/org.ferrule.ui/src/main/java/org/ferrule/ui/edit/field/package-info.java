/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Fields that show and change one feature of an object, every change as a command. A
 * {@link org.ferrule.ui.edit.field.FieldForm} makes them, lays them out, and keeps them current.
 */
package org.ferrule.ui.edit.field;
