/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Costed</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Something that uses up time, contrast medium, dose and money.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Costed#getMinutes <em>Minutes</em>}</li>
 *   <li>{@link org.ferrule.model.Costed#getContrastMl <em>Contrast Ml</em>}</li>
 *   <li>{@link org.ferrule.model.Costed#getDoseMgy <em>Dose Mgy</em>}</li>
 *   <li>{@link org.ferrule.model.Costed#getMoney <em>Money</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getCosted()
 * @model abstract="true"
 * @generated
 */
public interface Costed extends Element
{
	/**
	 * Returns the value of the '<em><b>Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Time in minutes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Minutes</em>' attribute.
	 * @see #setMinutes(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getCosted_Minutes()
	 * @model annotation="https://ferrule.invalid/annotation/1 least='0' label='Minutes'"
	 * @generated
	 */
	BigDecimal getMinutes();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Costed#getMinutes <em>Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minutes</em>' attribute.
	 * @see #getMinutes()
	 * @generated
	 */
	void setMinutes(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Contrast Ml</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Contrast medium in mL.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Contrast Ml</em>' attribute.
	 * @see #setContrastMl(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getCosted_ContrastMl()
	 * @model annotation="https://ferrule.invalid/annotation/1 least='0' label='Contrast (mL)'"
	 * @generated
	 */
	BigDecimal getContrastMl();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Costed#getContrastMl <em>Contrast Ml</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contrast Ml</em>' attribute.
	 * @see #getContrastMl()
	 * @generated
	 */
	void setContrastMl(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Dose Mgy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Air kerma at the reference point, in mGy.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dose Mgy</em>' attribute.
	 * @see #setDoseMgy(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getCosted_DoseMgy()
	 * @model annotation="https://ferrule.invalid/annotation/1 least='0' label='Dose (mGy)'"
	 * @generated
	 */
	BigDecimal getDoseMgy();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Costed#getDoseMgy <em>Dose Mgy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dose Mgy</em>' attribute.
	 * @see #getDoseMgy()
	 * @generated
	 */
	void setDoseMgy(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Money</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Money in the currency of the laboratory, beside the prices of the devices.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Money</em>' attribute.
	 * @see #setMoney(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getCosted_Money()
	 * @model annotation="https://ferrule.invalid/annotation/1 least='0'"
	 * @generated
	 */
	BigDecimal getMoney();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Costed#getMoney <em>Money</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Money</em>' attribute.
	 * @see #getMoney()
	 * @generated
	 */
	void setMoney(BigDecimal value);

} // Costed
