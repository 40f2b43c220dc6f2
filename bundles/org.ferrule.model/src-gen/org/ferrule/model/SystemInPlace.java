/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>System In Place</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What is in place, outermost first.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.SystemInPlace#getSheath <em>Sheath</em>}</li>
 *   <li>{@link org.ferrule.model.SystemInPlace#getValve <em>Valve</em>}</li>
 *   <li>{@link org.ferrule.model.SystemInPlace#getGuide <em>Guide</em>}</li>
 *   <li>{@link org.ferrule.model.SystemInPlace#getExtension <em>Extension</em>}</li>
 *   <li>{@link org.ferrule.model.SystemInPlace#getMicrocatheter <em>Microcatheter</em>}</li>
 *   <li>{@link org.ferrule.model.SystemInPlace#getMainWire <em>Main Wire</em>}</li>
 *   <li>{@link org.ferrule.model.SystemInPlace#getSecondWire <em>Second Wire</em>}</li>
 *   <li>{@link org.ferrule.model.SystemInPlace#getAnchor <em>Anchor</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getSystemInPlace()
 * @model annotation="https://ferrule.invalid/annotation/1 label='System in place'"
 * @generated
 */
public interface SystemInPlace extends Element
{
	/**
	 * Returns the value of the '<em><b>Sheath</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The introducer sheath. The device: id, or path!id where two libraries share an id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sheath</em>' attribute.
	 * @see #setSheath(String)
	 * @see org.ferrule.model.ModelPackage#getSystemInPlace_Sheath()
	 * @model
	 * @generated
	 */
	String getSheath();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SystemInPlace#getSheath <em>Sheath</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheath</em>' attribute.
	 * @see #getSheath()
	 * @generated
	 */
	void setSheath(String value);

	/**
	 * Returns the value of the '<em><b>Valve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The haemostasis valve. The device: id, or path!id where two libraries share an id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Valve</em>' attribute.
	 * @see #setValve(String)
	 * @see org.ferrule.model.ModelPackage#getSystemInPlace_Valve()
	 * @model
	 * @generated
	 */
	String getValve();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SystemInPlace#getValve <em>Valve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Valve</em>' attribute.
	 * @see #getValve()
	 * @generated
	 */
	void setValve(String value);

	/**
	 * Returns the value of the '<em><b>Guide</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The guide catheter: id, or path!id where two libraries share an id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Guide</em>' attribute.
	 * @see #setGuide(String)
	 * @see org.ferrule.model.ModelPackage#getSystemInPlace_Guide()
	 * @model required="true"
	 * @generated
	 */
	String getGuide();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SystemInPlace#getGuide <em>Guide</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Guide</em>' attribute.
	 * @see #getGuide()
	 * @generated
	 */
	void setGuide(String value);

	/**
	 * Returns the value of the '<em><b>Extension</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The guide extension, with how far it protrudes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Extension</em>' containment reference.
	 * @see #setExtension(ThroughExtension)
	 * @see org.ferrule.model.ModelPackage#getSystemInPlace_Extension()
	 * @model containment="true"
	 * @generated
	 */
	ThroughExtension getExtension();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SystemInPlace#getExtension <em>Extension</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Extension</em>' containment reference.
	 * @see #getExtension()
	 * @generated
	 */
	void setExtension(ThroughExtension value);

	/**
	 * Returns the value of the '<em><b>Microcatheter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The microcatheter over the main wire. The device: id, or path!id where two libraries share an id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Microcatheter</em>' attribute.
	 * @see #setMicrocatheter(String)
	 * @see org.ferrule.model.ModelPackage#getSystemInPlace_Microcatheter()
	 * @model
	 * @generated
	 */
	String getMicrocatheter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SystemInPlace#getMicrocatheter <em>Microcatheter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Microcatheter</em>' attribute.
	 * @see #getMicrocatheter()
	 * @generated
	 */
	void setMicrocatheter(String value);

	/**
	 * Returns the value of the '<em><b>Main Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The wire across the lesion. The device: id, or path!id where two libraries share an id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Main Wire</em>' attribute.
	 * @see #setMainWire(String)
	 * @see org.ferrule.model.ModelPackage#getSystemInPlace_MainWire()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Main wire'"
	 * @generated
	 */
	String getMainWire();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SystemInPlace#getMainWire <em>Main Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Main Wire</em>' attribute.
	 * @see #getMainWire()
	 * @generated
	 */
	void setMainWire(String value);

	/**
	 * Returns the value of the '<em><b>Second Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The wire beside it. The device: id, or path!id where two libraries share an id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Second Wire</em>' attribute.
	 * @see #setSecondWire(String)
	 * @see org.ferrule.model.ModelPackage#getSystemInPlace_SecondWire()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Second wire'"
	 * @generated
	 */
	String getSecondWire();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SystemInPlace#getSecondWire <em>Second Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Second Wire</em>' attribute.
	 * @see #getSecondWire()
	 * @generated
	 */
	void setSecondWire(String value);

	/**
	 * Returns the value of the '<em><b>Anchor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The balloon that anchors. The device: id, or path!id where two libraries share an id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Anchor</em>' attribute.
	 * @see #setAnchor(String)
	 * @see org.ferrule.model.ModelPackage#getSystemInPlace_Anchor()
	 * @model
	 * @generated
	 */
	String getAnchor();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SystemInPlace#getAnchor <em>Anchor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Anchor</em>' attribute.
	 * @see #getAnchor()
	 * @generated
	 */
	void setAnchor(String value);

} // SystemInPlace
