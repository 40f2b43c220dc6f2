/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Ratio Band</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A band of ratios of a device's diameter to that of the vessel, with what a source says of it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.RatioBand#getUse <em>Use</em>}</li>
 *   <li>{@link org.ferrule.model.RatioBand#getLow <em>Low</em>}</li>
 *   <li>{@link org.ferrule.model.RatioBand#getHigh <em>High</em>}</li>
 *   <li>{@link org.ferrule.model.RatioBand#getMeaning <em>Meaning</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getRatioBand()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Band of ratios'"
 * @generated
 */
public interface RatioBand extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Use</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.RatioUse}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is compared with the vessel.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Use</em>' attribute.
	 * @see org.ferrule.model.RatioUse
	 * @see #isSetUse()
	 * @see #unsetUse()
	 * @see #setUse(RatioUse)
	 * @see org.ferrule.model.ModelPackage#getRatioBand_Use()
	 * @model unsettable="true" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Ratio of'"
	 * @generated
	 */
	RatioUse getUse();

	/**
	 * Sets the value of the '{@link org.ferrule.model.RatioBand#getUse <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Use</em>' attribute.
	 * @see org.ferrule.model.RatioUse
	 * @see #isSetUse()
	 * @see #unsetUse()
	 * @see #getUse()
	 * @generated
	 */
	void setUse(RatioUse value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.RatioBand#getUse <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetUse()
	 * @see #getUse()
	 * @see #setUse(RatioUse)
	 * @generated
	 */
	void unsetUse();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.RatioBand#getUse <em>Use</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Use</em>' attribute is set.
	 * @see #unsetUse()
	 * @see #getUse()
	 * @see #setUse(RatioUse)
	 * @generated
	 */
	boolean isSetUse();

	/**
	 * Returns the value of the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The lower end; open when not given.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Low</em>' attribute.
	 * @see #setLow(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getRatioBand_Low()
	 * @model annotation="https://ferrule.invalid/annotation/1 above='0' label='From'"
	 * @generated
	 */
	BigDecimal getLow();

	/**
	 * Sets the value of the '{@link org.ferrule.model.RatioBand#getLow <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Low</em>' attribute.
	 * @see #getLow()
	 * @generated
	 */
	void setLow(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The upper end; open when not given.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>High</em>' attribute.
	 * @see #setHigh(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getRatioBand_High()
	 * @model annotation="https://ferrule.invalid/annotation/1 above='0' label='To'"
	 * @generated
	 */
	BigDecimal getHigh();

	/**
	 * Sets the value of the '{@link org.ferrule.model.RatioBand#getHigh <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>High</em>' attribute.
	 * @see #getHigh()
	 * @generated
	 */
	void setHigh(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Meaning</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the source says of a ratio within the band.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Meaning</em>' attribute.
	 * @see #setMeaning(String)
	 * @see org.ferrule.model.ModelPackage#getRatioBand_Meaning()
	 * @model required="true"
	 * @generated
	 */
	String getMeaning();

	/**
	 * Sets the value of the '{@link org.ferrule.model.RatioBand#getMeaning <em>Meaning</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Meaning</em>' attribute.
	 * @see #getMeaning()
	 * @generated
	 */
	void setMeaning(String value);

} // RatioBand
