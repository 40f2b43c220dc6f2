/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Prior</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Counts that are assumed, with the word of who assumes them.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Prior#getSuccesses <em>Successes</em>}</li>
 *   <li>{@link org.ferrule.model.Prior#getFailures <em>Failures</em>}</li>
 *   <li>{@link org.ferrule.model.Prior#getLabel <em>Label</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getPrior()
 * @model
 * @generated
 */
public interface Prior extends Element
{
	/**
	 * Returns the value of the '<em><b>Successes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The assumed number of successes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Successes</em>' attribute.
	 * @see #setSuccesses(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getPrior_Successes()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 above='0'"
	 * @generated
	 */
	BigDecimal getSuccesses();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Prior#getSuccesses <em>Successes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Successes</em>' attribute.
	 * @see #getSuccesses()
	 * @generated
	 */
	void setSuccesses(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Failures</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The assumed number of failures.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Failures</em>' attribute.
	 * @see #setFailures(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getPrior_Failures()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 above='0'"
	 * @generated
	 */
	BigDecimal getFailures();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Prior#getFailures <em>Failures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Failures</em>' attribute.
	 * @see #getFailures()
	 * @generated
	 */
	void setFailures(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who assumes them, and why.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Label</em>' attribute.
	 * @see #setLabel(String)
	 * @see org.ferrule.model.ModelPackage#getPrior_Label()
	 * @model required="true"
	 * @generated
	 */
	String getLabel();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Prior#getLabel <em>Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Label</em>' attribute.
	 * @see #getLabel()
	 * @generated
	 */
	void setLabel(String value);

} // Prior
