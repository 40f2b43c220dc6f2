/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Flow Limit</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A share of flow below which a caution is due.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.FlowLimit#getUse <em>Use</em>}</li>
 *   <li>{@link org.ferrule.model.FlowLimit#getLeast <em>Least</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getFlowLimit()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Limit of flow'"
 * @generated
 */
public interface FlowLimit extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Use</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.FlowUse}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What suffers from less.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Use</em>' attribute.
	 * @see org.ferrule.model.FlowUse
	 * @see #isSetUse()
	 * @see #unsetUse()
	 * @see #setUse(FlowUse)
	 * @see org.ferrule.model.ModelPackage#getFlowLimit_Use()
	 * @model unsettable="true" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Needed for'"
	 * @generated
	 */
	FlowUse getUse();

	/**
	 * Sets the value of the '{@link org.ferrule.model.FlowLimit#getUse <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Use</em>' attribute.
	 * @see org.ferrule.model.FlowUse
	 * @see #isSetUse()
	 * @see #unsetUse()
	 * @see #getUse()
	 * @generated
	 */
	void setUse(FlowUse value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.FlowLimit#getUse <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetUse()
	 * @see #getUse()
	 * @see #setUse(FlowUse)
	 * @generated
	 */
	void unsetUse();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.FlowLimit#getUse <em>Use</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Use</em>' attribute is set.
	 * @see #unsetUse()
	 * @see #getUse()
	 * @see #setUse(FlowUse)
	 * @generated
	 */
	boolean isSetUse();

	/**
	 * Returns the value of the '<em><b>Least</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The least share of the flow through the empty lumen, between 0 and 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Least</em>' attribute.
	 * @see #setLeast(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getFlowLimit_Least()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 least='0' most='1' label='Least share of flow'"
	 * @generated
	 */
	BigDecimal getLeast();

	/**
	 * Sets the value of the '{@link org.ferrule.model.FlowLimit#getLeast <em>Least</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Least</em>' attribute.
	 * @see #getLeast()
	 * @generated
	 */
	void setLeast(BigDecimal value);

} // FlowLimit
