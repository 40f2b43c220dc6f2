/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Chance Limit</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A chance of overlap above which a caution is due.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.ChanceLimit#getGreatest <em>Greatest</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getChanceLimit()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Limit of chance'"
 * @generated
 */
public interface ChanceLimit extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Greatest</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The greatest chance that calls for no caution, between 0 and 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Greatest</em>' attribute.
	 * @see #setGreatest(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getChanceLimit_Greatest()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 least='0' most='1' label='Greatest chance'"
	 * @generated
	 */
	BigDecimal getGreatest();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ChanceLimit#getGreatest <em>Greatest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Greatest</em>' attribute.
	 * @see #getGreatest()
	 * @generated
	 */
	void setGreatest(BigDecimal value);

} // ChanceLimit
